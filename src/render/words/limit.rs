//! The limit in words, by regime: what exactly reaching it means is part of every word.

use crate::model::rule::{Regime, Rule};
use crate::model::statistics::CloseBand;
use crate::render::numbers;
use crate::words::{Catalogue, say, side};

/// The limit of one rule in the words of a document.
#[derive(Clone, Copy, Debug)]
pub struct LimitWords<'a> {
    rule: Rule,
    words: &'a Catalogue,
}

impl<'a> LimitWords<'a> {
    /// Of this rule, in this language.
    pub fn of(rule: Rule, words: &'a Catalogue) -> LimitWords<'a> {
        LimitWords { rule, words }
    }

    /// By which a message chooses its wording of the limit.
    pub fn side(&self) -> &'static str {
        side(self.rule.limit)
    }

    /// `ppm` or `mg/kg`.
    pub fn unit(&self) -> &'static str {
        self.rule.regime.unit()
    }

    /// `20 ppm`.
    pub fn figure(&self) -> String {
        self.quantity(&numbers::plain(self.rule.limit.ppm))
    }

    /// A figure in the unit of the limit.
    pub fn quantity(&self, figure: &str) -> String {
        self.words.quantity(figure, self.unit())
    }

    /// What a line at the limit is called: `Limit 20 ppm`, `LOD 3 mg/kg`.
    pub fn flag(&self) -> String {
        self.words.say(&say::limit_flag(self.side(), self.figure()))
    }

    /// The same in a sentence: `the limit`, `the limit of detection`.
    pub fn the_line(&self) -> String {
        self.words.say(&say::the_line(self.side()))
    }

    /// `20 parts per million (ppm)`.
    pub fn in_full(&self) -> String {
        let unit = if self.unit() == "ppm" { "ppm" } else { "mg" };
        let figure = numbers::plain(self.rule.limit.ppm);
        let figure = self.words.locale().figure(&figure);
        self.words.say(&say::limit_in_full(unit, figure))
    }

    /// `at or above 20 ppm`, `above 20 mg/kg`, `gluten detected`.
    pub fn over(&self) -> String {
        self.words.say(&say::limit_over(self.side(), self.figure()))
    }

    /// `below 20 ppm`, `at or below 20 mg/kg`, `no gluten detected (LOD 3 mg/kg)`.
    pub fn within(&self) -> String {
        self.words
            .say(&say::limit_within(self.side(), self.figure()))
    }

    /// `at or above`, `above`, `detected`.
    pub fn over_short(&self) -> String {
        self.words.say(&say::limit_over_short(self.side()))
    }

    /// `below`, `at or below`, `not detected`.
    pub fn within_short(&self) -> String {
        self.words.say(&say::limit_within_short(self.side()))
    }

    /// `at or above the limit`, `above the limit`, `positive for gluten`.
    pub fn over_the_limit(&self) -> String {
        self.words.say(&say::over_the_limit(self.side()))
    }

    /// `below the limit`, `at or below the limit`, `negative for gluten`.
    pub fn within_the_limit(&self) -> String {
        self.words.say(&say::within_the_limit(self.side()))
    }

    /// Where the limit is written, in a sentence.
    pub fn source(&self) -> String {
        let regime = match self.rule.regime {
            Regime::AuNz => "au",
            other => other.word(),
        };
        self.words
            .say(&say::limit_source(regime, self.side(), self.figure()))
    }
}

/// What is close to the limit.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CloseWords {
    /// In a sentence: `Hatched, 15.7 to 24.3 ppm: …`.
    pub sentence: String,
    /// Beside a sample of it: `15.7 to 24.3 ppm: …`.
    pub means: String,
}

impl CloseWords {
    /// Of this band, under this rule.
    pub fn of(close: CloseBand, rule: Rule, words: &Catalogue) -> CloseWords {
        let figure = |x| words.locale().figure(&numbers::figure(x, rule.limit));
        let (from, decision) = (figure(close.from), rule.decision.word());
        let to = words.quantity(&numbers::figure(close.to, rule.limit), rule.regime.unit());
        CloseWords {
            sentence: words.say(&say::chart_close(decision, from.as_str(), to.as_str())),
            means: words.say(&say::chart_close_means(decision, from, to)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::ppm::Ppm;
    use crate::model::rule::{Decision, Limit};
    use crate::words::english;

    fn said(regime: Regime) -> LimitWords<'static> {
        let rule = Rule {
            regime,
            limit: regime.limit().unwrap_or(Limit::amount(Ppm(20.0), false)),
            decision: Decision::Simple,
        };
        LimitWords::of(rule, english())
    }

    #[test]
    fn the_words_follow_what_reaching_the_limit_means() {
        assert_eq!(said(Regime::Us).over(), "at or above 20\u{a0}ppm");
        assert_eq!(said(Regime::Us).within(), "below 20\u{a0}ppm");
        assert_eq!(said(Regime::Eu).over(), "above 20\u{a0}mg/kg");
        assert_eq!(said(Regime::Eu).within(), "at or below 20\u{a0}mg/kg");
        assert_eq!(said(Regime::AuNz).over(), "gluten detected");
        let within = "no gluten detected (LOD 3\u{a0}mg/kg)";
        assert_eq!(said(Regime::AuNz).within(), within);
    }

    #[test]
    fn every_regime_names_its_source() {
        for (regime, _) in Regime::ALL {
            assert!(
                said(*regime).source().contains(&said(*regime).figure()),
                "{regime:?}"
            );
        }
    }
}
