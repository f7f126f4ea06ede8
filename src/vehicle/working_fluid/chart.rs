//! The shape of the charts of R-744, for the generated table and for those who read it.

/// Temperature (K), logarithm of density (kg/m3) and entropy (J/(kg K)) at a node.
pub(in crate::vehicle) type Node = [f32; 3];

/// Nodes over two coordinates, the second running fastest.
pub(in crate::vehicle) struct Chart {
    pub first: f64,
    pub first_step: f64,
    pub second: f64,
    pub second_step: f64,
    pub columns: usize,
    pub nodes: &'static [Node],
}
