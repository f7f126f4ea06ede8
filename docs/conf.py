"""The guide: pages in Markdown, the references of Python and C, pictures drawn by the library when the guide is built."""

import shutil
import sys
from pathlib import Path

HERE = Path(__file__).parent
sys.path.insert(0, str(HERE))

import coldloop  # noqa: E402
import figures  # noqa: E402
import references  # noqa: E402

project = "coldloop"
release = version = coldloop.__version__
extensions = ["myst_nb", "sphinx.ext.autodoc"]
exclude_patterns = ["_build"]
myst_enable_extensions = ["colon_fence", "deflist"]
myst_heading_anchors = 3
# The notebook is kept without its outputs; it is run for the guide.
nb_execution_mode = "force"
nb_execution_raise_on_error = True
nb_execution_timeout = 300
html_theme = "furo"
html_title = "coldloop"
autodoc_typehints = "signature"
autodoc_member_order = "bysource"

GENERATED = HERE / "generated"
GENERATED.mkdir(exist_ok=True)
references.write(GENERATED)
shutil.copy(HERE.parent / "examples" / "python" / "one_repair.ipynb", GENERATED)
figures.draw(GENERATED)
