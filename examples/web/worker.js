// Keeps the page on the tablet: stores what the server sends, and serves it where the server cannot be reached.

const FILES = ["./", "index.html", "app.js", "words.js", "style.css", "coldloop/coldloop.js", "coldloop/coldloop.wasm"];

self.addEventListener("install", (event) => {
  event.waitUntil(caches.open("visit").then((kept) => kept.addAll(FILES)).then(() => self.skipWaiting()));
});

self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

self.addEventListener("fetch", (event) => {
  if (event.request.method === "GET") event.respondWith(fresh(event.request));
});

async function fresh(request) {
  const kept = await caches.open("visit");
  try {
    const response = await fetch(request);
    if (response.ok) await kept.put(request, response.clone());
    return response;
  } catch (unreachable) {
    const old = await kept.match(request, { ignoreSearch: true });
    if (old === undefined) throw unreachable;
    return old;
  }
}
