//! The name under which a program finds the shared library at run time, that of the major version.

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
}
