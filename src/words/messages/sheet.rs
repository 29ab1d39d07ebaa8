//! What a results sheet says: verdict, ruler, packages, what the result says and does not say.

use super::*;

messages! {
    "sheet"
    /// A package near the limit, as the sentence beside the verdict lists it.
    near_limit_package(package: text, figure: text, chance: text);
    /// The packages near the limit beyond those that are named.
    near_limit_more(packages: count, chance: text);
    /// How likely the truth is on the other side of the limit.
    near_limit(packages: text, basis: ["lab" "lab_k2" "assumed"], side: ["over" "within"], rule: ["fails" "passes" "detection"], limit: text);
}
