//! All that a run knows once everything is decided, and before anything is drawn or written.

use crate::model::caution::Caution;
use crate::model::exhibit::Exhibit;
use crate::model::followup::FollowUpState;
use crate::model::place::LabFile;
use crate::model::plate::MeasuredPlate;
use crate::model::problem::Problems;
use crate::model::publication::{Audience, Publication, UnderRevision};
use crate::model::registers::Registers;
use crate::model::sheet::Sheet;
use crate::model::statistics::{ProductStatistics, ProgrammeStatistics};
use crate::model::understanding::Understanding;
use crate::model::verdict::{ProductVerdict, Verdict};
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
    /// Plates whose curves were fitted again, by file and place; none where it is for anyone, since a plate holds samples of
    /// several makers.
    pub plates: Vec<MeasuredPlate>,
    /// What is wrong with the data.
    pub problems: Problems,
    /// For whom it is: the programme itself, or anyone.
    pub audience: Audience,
    /// Products of which the lab has reported nothing, where these are left out of `products`.
    pub with_lab: usize,
    /// What was issued and does not stand any more; only where it is for anyone.
    pub under_revision: Vec<UnderRevision>,
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
    /// What to bear in mind about the assay and this food; nothing of it decides.
    pub cautions: Vec<Caution>,
    /// The rounds in which the product was tested before, the latest first.
    pub before: Vec<OtherRound>,
    /// Those of them that its sheet names.
    pub earlier: Vec<OtherRound>,
    /// The published rounds in which it was tested since, and which name this one; the earliest first.
    pub later: Vec<OtherRound>,
    /// The next round of which packages are on record.
    pub next_round: Option<String>,
    /// Certificates and photographs in the inbox that bear on it.
    pub exhibits: Vec<Exhibit>,
    /// Whether its sheet may be published.
    pub publication: Publication,
    /// What that rests on, in words.
    pub publication_said: String,
    /// What its sheet says: none until the states of publication are noted, and the same from then on.
    pub sheet: Option<Arc<Sheet>>,
}

impl JudgedProduct {
    /// What its sheet says.
    ///
    /// # Panics
    /// Before the states of publication are noted.
    pub fn sheet(&self) -> &Sheet {
        let sheet = self.sheet.as_deref();
        sheet.expect("a sheet is asked for once its state is noted")
    }
}

/// What another round of a product came to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OtherRound {
    /// The round of testing.
    pub round: String,
    /// What its packages said.
    pub verdict: Verdict,
    /// How many packages it had.
    pub packages: usize,
    /// How many of them were over the limit.
    pub over: usize,
}
