//! The limit in words, by regime: what exactly reaching it means is part of every word.

use crate::model::rule::{Limit, Regime, Rule};
use crate::render::numbers::{self, NBSP};
use crate::render::words::with_unit;
use crate::words::{Catalogue, say, side};

/// The limit of one rule, in words.
#[derive(Clone, Copy, Debug)]
pub struct LimitWords {
    regime: Regime,
    limit: Limit,
}

impl LimitWords {
    /// Of this rule.
    pub fn of(rule: Rule) -> LimitWords {
        LimitWords {
            regime: rule.regime,
            limit: rule.limit,
        }
    }

    /// `ppm` or `mg/kg`.
    pub fn unit(&self) -> &'static str {
        self.regime.unit()
    }

    /// `20 ppm`.
    pub fn figure(&self) -> String {
        with_unit(&numbers::plain(self.limit.ppm), self.unit())
    }

    /// What a line at the limit is called: `Limit 20 ppm`, `LOD 3 mg/kg`.
    pub fn flag(&self) -> String {
        let name = if self.limit.detection { "LOD" } else { "Limit" };
        format!("{name} {}", self.figure())
    }

    /// The same in a sentence: `the limit`, `the limit of detection`.
    pub fn the_line(&self) -> &'static str {
        if self.limit.detection {
            "the limit of detection"
        } else {
            "the limit"
        }
    }

    /// `20 parts per million (ppm)`.
    pub fn in_full(&self) -> String {
        let figure = numbers::plain(self.limit.ppm);
        match self.unit() {
            "ppm" => format!("{figure}{NBSP}parts per million (ppm)"),
            _ => format!("{figure}{NBSP}milligrams in a kilogram (mg/kg)"),
        }
    }

    /// `at or above 20 ppm`, or `above 20 mg/kg` where the limit itself is within it, or `gluten detected`.
    pub fn over(&self) -> String {
        if self.limit.detection {
            return "gluten detected".to_owned();
        }
        format!("{} {}", self.over_word(), self.figure())
    }

    /// `below 20 ppm`, or `at or below 20 mg/kg`, or `no gluten detected (LOD 3 mg/kg)`.
    pub fn within(&self) -> String {
        if self.limit.detection {
            return format!("no gluten detected (LOD {})", self.figure());
        }
        format!("{} {}", self.within_word(), self.figure())
    }

    /// `at or above the limit`, or `above the limit`, or `as containing gluten`.
    pub fn over_the_limit(&self) -> String {
        if self.limit.detection {
            return "positive for gluten".to_owned();
        }
        format!("{} the limit", self.over_word())
    }

    /// `below the limit`, or `at or below the limit`.
    pub fn within_the_limit(&self) -> String {
        if self.limit.detection {
            return "negative for gluten".to_owned();
        }
        format!("{} the limit", self.within_word())
    }

    /// `at or above the limit of 20 parts per million (ppm)`.
    pub fn over_in_full(&self) -> String {
        if self.limit.detection {
            return "with gluten detected".to_owned();
        }
        format!("{} the limit of {}", self.over_word(), self.in_full())
    }

    /// Why there is no verdict, before its cause.
    pub fn cannot_show(&self) -> String {
        if self.limit.detection {
            return "The results can’t show whether this food has detectable gluten.".to_owned();
        }
        format!(
            "The results can’t show on which side of the limit of {} this food is.",
            self.in_full()
        )
    }

    /// The same with the causes to follow.
    pub fn cannot_say(&self) -> String {
        if self.limit.detection {
            return "We can’t say whether this product has detectable gluten".to_owned();
        }
        format!(
            "We can’t say on which side of the limit of {} this product is",
            self.in_full()
        )
    }

    fn over_word(&self) -> &'static str {
        if self.limit.passes {
            "above"
        } else {
            "at or above"
        }
    }

    fn within_word(&self) -> &'static str {
        if self.limit.passes {
            "at or below"
        } else {
            "below"
        }
    }

    /// Where the limit is written, in a sentence.
    pub fn source(&self) -> String {
        let rule = match self.regime {
            Regime::Us => "21 CFR 101.91",
            Regime::Codex => "Codex standard CXS 118",
            Regime::Eu => "Regulation (EU) No 828/2014",
            Regime::Uk => "Regulation (EU) No 828/2014 as kept in UK law",
            Regime::Canada => {
                "Health Canada’s position on B.24.018 of the Food and Drug Regulations"
            }
            Regime::Argentina => "Resolución Conjunta 32/2023",
            Regime::Chile => "article 518 of the Reglamento Sanitario de los Alimentos",
            Regime::AuNz => "the Food Standards Code, Schedule 4",
            Regime::Custom => "the programme’s own rule",
        };
        if self.limit.detection {
            return format!(
                "The claim asks for no detectable gluten (Food Standards Code, Standard 1.2.7); the test detects from {} on (LOD).",
                self.figure()
            );
        }
        let least = if self.limit.passes {
            "no more than"
        } else {
            "less than"
        };
        format!("Limit: {least} {} ({rule}).", self.figure())
    }
}

/// The limit of one rule in the words of a document.
#[derive(Clone, Copy, Debug)]
pub struct LimitSaid<'a> {
    rule: Rule,
    words: &'a Catalogue,
}

impl<'a> LimitSaid<'a> {
    /// Of this rule, in this language.
    pub fn of(rule: Rule, words: &'a Catalogue) -> LimitSaid<'a> {
        LimitSaid { rule, words }
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::ppm::Ppm;
    use crate::model::rule::Decision;

    fn said(regime: Regime) -> LimitWords {
        LimitWords::of(Rule {
            regime,
            limit: regime.limit().unwrap_or(Limit::amount(Ppm(20.0), false)),
            decision: Decision::Simple,
        })
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
