//! What the processor can do beyond what the library was built for.

use std::sync::OnceLock;

/// Names in [`VARIABLE`], best last.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Instructions {
    /// What the library was built for.
    Baseline,
    /// AVX2 and fused multiplication: four numbers at once.
    Four,
    /// AVX-512: eight numbers at once, and the same answers as four.
    Eight,
}

/// The environment variable that asks for less than there is: `baseline` or `avx2`. It is read once.
const VARIABLE: &str = "LUBBERLINE_INSTRUCTIONS";

impl Instructions {
    /// The best there are, unless less was asked for.
    pub fn best() -> Self {
        static BEST: OnceLock<Instructions> = OnceLock::new();
        *BEST.get_or_init(|| Self::there().min(Self::asked(std::env::var(VARIABLE).ok().as_deref())))
    }

    fn there() -> Self {
        let has_four =
            std::arch::is_x86_feature_detected!("avx2") && std::arch::is_x86_feature_detected!("fma");
        let has_eight = std::arch::is_x86_feature_detected!("avx512f")
            && std::arch::is_x86_feature_detected!("avx512dq")
            && std::arch::is_x86_feature_detected!("avx512bw")
            && std::arch::is_x86_feature_detected!("avx512vl");
        match (has_four, has_eight) {
            (true, true) => Self::Eight,
            (true, false) => Self::Four,
            (false, _) => Self::Baseline,
        }
    }

    fn asked(name: Option<&str>) -> Self {
        match name {
            Some("baseline") => Self::Baseline,
            Some("avx2") => Self::Four,
            _ => Self::Eight,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn less_may_be_asked_for_and_never_more() {
        assert_eq!(Instructions::asked(Some("baseline")), Instructions::Baseline);
        assert_eq!(Instructions::asked(Some("avx2")), Instructions::Four);
        assert_eq!(Instructions::asked(None), Instructions::Eight);
        assert!(Instructions::best() <= Instructions::there());
    }
}
