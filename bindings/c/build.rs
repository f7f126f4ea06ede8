//! The name under which a program finds the shared library at run time, that of the major version; and its relocations, packed.

fn main() {
    println!("cargo::rerun-if-changed=build.rs");
    let major = env!("CARGO_PKG_VERSION_MAJOR");
    match std::env::var("CARGO_CFG_TARGET_OS").as_deref() {
        Ok("macos") => println!("cargo::rustc-cdylib-link-arg=-Wl,-install_name,@rpath/libcoldloop.{major}.dylib"),
        Ok("linux" | "android" | "freebsd" | "netbsd" | "openbsd") => {
            println!("cargo::rustc-cdylib-link-arg=-Wl,-soname,libcoldloop.so.{major}");
        }
        Ok(_) | Err(_) => {}
    }
    // Relocations in a twentieth of the room, which glibc reads from 2.36 on; an older linker leaves them as they are.
    let is = |name: &str, value: &str| std::env::var(name).as_deref() == Ok(value);
    if is("CARGO_CFG_TARGET_OS", "linux") && is("CARGO_CFG_TARGET_ENV", "gnu") {
        println!("cargo::rustc-cdylib-link-arg=-Wl,-z,pack-relative-relocs");
    }
}
