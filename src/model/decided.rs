//! All that a run knows once everything is decided, and before anything is drawn or written.

use crate::model::followup::FollowUpState;
use crate::model::place::LabFile;
use crate::model::problem::Problems;
use crate::model::registers::Registers;
use crate::model::statistics::{ProductStatistics, ProgrammeStatistics};
use crate::model::understanding::Understanding;
use crate::model::verdict::ProductVerdict;
use std::sync::Arc;

/// All that a run knows once everything is decided.
#[derive(Clone, Debug)]
pub struct Decided {
    /// By product id and round: each is one results sheet.
    pub products: Vec<JudgedProduct>,
    /// What the programme's results say together.
    pub statistics: ProgrammeStatistics,
    /// What people keep by hand.
    pub registers: Registers,
    /// The lab files that were read, by path; each content once.
    pub lab_files: Vec<Arc<LabFile>>,
    /// How each was understood, in the same order.
    pub understandings: Vec<Understanding>,
    /// What is wrong with the data.
    pub problems: Problems,
}

/// One product and round with everything that was worked out about it.
#[derive(Clone, Debug)]
pub struct JudgedProduct {
    /// The verdict with its packages.
    pub verdict: ProductVerdict,
    /// What so few packages can say.
    pub statistics: ProductStatistics,
    /// Where things stand with the maker.
    pub follow_up: FollowUpState,
}
