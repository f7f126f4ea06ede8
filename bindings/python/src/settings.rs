//! How an answer is to be judged, from keyword arguments.

use crate::errors::refused_key;
use coldloop::diagnosis::Settings;
use coldloop::{Error, ErrorKind, Fault, Quantity};
use pyo3::prelude::*;
use pyo3::types::{PyAnyMethods, PyDict};

/// The usual settings with those of the mapping in their place; a name that is none of them is refused.
pub(crate) fn settings(py: Python<'_>, given: &Bound<'_, PyDict>) -> PyResult<Settings> {
    let mut settings = Settings::default();
    let unknown = |key: &str| refused_key(py, Error::of(ErrorKind::UnknownName, Quantity::Name), key);
    for (name, value) in given {
        let name: String = name.extract()?;
        let share = || value.extract::<f64>();
        match name.as_str() {
            "priors" => {
                for item in value.call_method0("items")?.try_iter()? {
                    let (fault, prior): (String, f64) = item?.extract()?;
                    let known = Fault::from_id(&fault).ok_or_else(|| unknown(&format!("priors.{fault}")))?;
                    settings = settings.with_prior(known, prior);
                }
            }
            "none_of_these" => settings.none_of_these = share()?,
            "two_faults" => settings.two_faults = share()?,
            "healthy" => settings.healthy = share()?,
            "named" => settings.named = share()?,
            "nothing_fits" => settings.nothing_fits = share()?,
            "short_list" => settings.short_list = share()?,
            "least_information" => settings.least_information = share()?,
            "per_minute" => settings.prices.per_minute = share()?,
            "recovered" => settings.recovered = value.extract()?,
            _ => return Err(unknown(&name)),
        }
    }
    settings.check().map_err(|error| refused_key(py, error, "settings"))?;
    Ok(settings)
}
