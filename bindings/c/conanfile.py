"""The C library as a package for Conan 2, on Linux: `conan create bindings/c --test-folder tests/install`.

`bindings/c/install` builds it with cargo and puts it into the package with its own CMake package and pkg-config file, so that a
program finds coldloop::coldloop (shared) and coldloop::coldloop_static as it does without Conan.
"""

import os
import re
from pathlib import Path

from conan import ConanFile
from conan.errors import ConanInvalidConfiguration
from conan.tools.env import Environment
from conan.tools.files import copy


class Coldloop(ConanFile):
    name = "coldloop"
    description = "Vehicle refrigerant properties and vehicle air-conditioning diagnosis."
    license = "MIT OR Apache-2.0"
    settings = "os", "arch"
    package_type = "shared-library"
    no_copy_source = True

    def set_version(self):
        header = (Path(self.recipe_folder) / "coldloop.h").read_text(encoding="utf-8")
        self.version = ".".join(re.findall(r"^#define COLDLOOP_VERSION_[A-Z]+ (\d+)$", header, re.MULTILINE))

    def export_sources(self):
        # cargo needs every member of the workspace.
        root = Path(self.recipe_folder).parents[1]
        for pattern in ("Cargo.*", "LICENSE", "README.md", "benches/*", "bindings/*", "src/*", "tables/*"):
            copy(self, pattern, root, self.export_sources_folder)

    def validate(self):
        if self.settings.os != "Linux":
            raise ConanInvalidConfiguration("bindings/c/install knows the shared libraries of Linux only")

    def package(self):
        environment = Environment()
        environment.define_path("CARGO_TARGET_DIR", os.environ.get("CARGO_TARGET_DIR", os.path.join(self.build_folder, "target")))
        with environment.vars(self, scope="build").apply():
            self.run(f'bindings/c/install --prefix "{self.package_folder}"', cwd=self.source_folder)
        copy(self, "LICENSE", self.source_folder, os.path.join(self.package_folder, "licenses"))

    def package_info(self):
        self.cpp_info.libs = ["coldloop"]
        self.cpp_info.system_libs = ["m", "pthread", "dl"]
        # The package's own CMake files, not others that Conan would write.
        self.cpp_info.set_property("cmake_find_mode", "none")
        self.cpp_info.builddirs = [os.path.join("lib", "cmake", "coldloop")]
