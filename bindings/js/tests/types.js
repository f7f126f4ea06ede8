// Makes package/answers.d.ts from the schemas of readings files and answers:
//
//     node types.js docs/schema bindings/js/package/answers.d.ts           writes it
//     node types.js docs/schema bindings/js/package/answers.d.ts --check   fails if it is stale

import { readFile, writeFile } from "node:fs/promises";
import { compile } from "json-schema-to-typescript";

const [folder, file, check] = process.argv.slice(2);
let types = "/* The types of readings files and answers, made from their schemas. */\n\n";
for (const [schema, name] of [["readings", "ReadingsFile"], ["answer", "Answer"]]) {
  const { title, ...rest } = JSON.parse(await readFile(`${folder}/${schema}.json`, "utf8"));
  types += await compile({ ...rest, title: name, description: `${title}.` }, name, {
    additionalProperties: true,
    bannerComment: "",
    ignoreMinAndMaxItems: true,
  });
}
if (check !== "--check") {
  await writeFile(file, types);
} else if ((await readFile(file, "utf8")) !== types) {
  console.error(`${file} is not made from the schemas as they are now`);
  process.exit(1);
}
