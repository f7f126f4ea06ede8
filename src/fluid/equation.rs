//! What an equation of state is made of: the numbers of its paper, without any arithmetic.

/// An equation of state in the reduced Helmholtz energy, alpha(tau, delta), with tau = T_r / T and
/// delta = rho / rho_r.
#[derive(Clone, Copy, Debug)]
pub struct Equation {
    /// Molar gas constant as the paper has it, J/(mol K).
    pub gas_constant: f64,
    /// Molar mass, kg/mol.
    pub molar_mass: f64,
    /// Reducing temperature, K.
    pub reducing_t_k: f64,
    /// Reducing density, mol/m3.
    pub reducing_rho_mol_m3: f64,
    /// The ideal gas.
    pub ideal: Ideal,
    /// n delta^d tau^t exp(-delta^l).
    pub power: &'static [Power],
    /// n delta^d tau^t exp(-eta (delta - epsilon)^2 - beta (tau - gamma)^2).
    pub gaussian: &'static [Gaussian],
    /// n delta^d tau^t exp(-delta^l) exp(-tau^m).
    pub double_exponential: &'static [DoubleExponential],
    /// The terms of Span and Wagner (1996) for the critical region.
    pub non_analytic: &'static [NonAnalytic],
}

impl Equation {
    /// How many terms are a factor of tau times a factor of delta.
    pub const fn separable_terms(&self) -> usize {
        self.power.len() + self.gaussian.len() + self.double_exponential.len()
    }

    /// Whether the terms are in rising order of the power of delta within their exponentials.
    pub(crate) const fn is_in_order(&self) -> bool {
        let mut k = 1;
        while k < self.power.len() {
            if self.power[k - 1].l > self.power[k].l {
                return false;
            }
            k += 1;
        }
        let mut k = 1;
        while k < self.double_exponential.len() {
            if self.double_exponential[k - 1].l > self.double_exponential[k].l {
                return false;
            }
            k += 1;
        }
        true
    }

    /// The highest power of delta within an exponential; the terms are in rising order of it.
    pub const fn deepest_damping(&self) -> usize {
        let power = match self.power.last() {
            Some(term) => term.l as usize,
            None => 0,
        };
        match self.double_exponential.last() {
            Some(term) if term.l as usize > power => term.l as usize,
            Some(_) | None => power,
        }
    }
}

/// alpha0 = ln delta + constant + slope tau + log_tau ln tau + sum n tau^t + sum n ln(1 - exp(-theta tau)).
#[derive(Clone, Copy, Debug)]
pub struct Ideal {
    /// The constant, which fixes the entropy.
    pub constant: f64,
    /// The factor of tau, which fixes the enthalpy.
    pub slope: f64,
    /// The factor of ln tau.
    pub log_tau: f64,
    /// (n, t) of n tau^t.
    pub powers: &'static [(f64, f64)],
    /// (n, theta) of n ln(1 - exp(-theta tau)).
    pub planck_einstein: &'static [(f64, f64)],
}

/// n delta^d tau^t exp(-delta^l); without the exponential where l is 0.
#[derive(Clone, Copy, Debug)]
pub struct Power {
    /// Factor.
    pub n: f64,
    /// Exponent of tau.
    pub t: f64,
    /// Exponent of delta.
    pub d: u8,
    /// Exponent of delta within the exponential; 0 for none.
    pub l: u8,
}

/// n delta^d tau^t exp(-eta (delta - epsilon)^2 - beta (tau - gamma)^2).
#[derive(Clone, Copy, Debug)]
pub struct Gaussian {
    /// Factor.
    pub n: f64,
    /// Exponent of tau.
    pub t: f64,
    /// Exponent of delta.
    pub d: u8,
    /// Width in delta.
    pub eta: f64,
    /// Width in tau.
    pub beta: f64,
    /// Centre in tau.
    pub gamma: f64,
    /// Centre in delta.
    pub epsilon: f64,
}

/// n delta^d tau^t exp(-delta^l) exp(-tau^m), the form of Lemmon and Jacobsen (2005).
#[derive(Clone, Copy, Debug)]
pub struct DoubleExponential {
    /// Factor.
    pub n: f64,
    /// Exponent of tau.
    pub t: f64,
    /// Exponent of delta.
    pub d: u8,
    /// Exponent of delta within the exponential.
    pub l: u8,
    /// Exponent of tau within the exponential.
    pub m: f64,
}

/// n Delta^b delta psi, with Delta = theta^2 + B ((delta - 1)^2)^a,
/// theta = (1 - tau) + A ((delta - 1)^2)^(1 / (2 beta)) and psi = exp(-C (delta - 1)^2 - D (tau - 1)^2).
#[derive(Clone, Copy, Debug)]
pub struct NonAnalytic {
    /// Factor.
    pub n: f64,
    /// Exponent of Delta's second term.
    pub a: f64,
    /// Exponent of Delta.
    pub b: f64,
    /// Exponent within theta.
    pub beta: f64,
    /// A, factor within theta.
    pub theta_factor: f64,
    /// B, factor of Delta's second term.
    pub delta_factor: f64,
    /// C, width of psi in delta.
    pub density_width: f64,
    /// D, width of psi in tau.
    pub temperature_width: f64,
}
