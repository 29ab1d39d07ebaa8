//! What is said of a label.

use super::*;

messages! {
    "label"
    /// What stands for the words where the finding rests on the register.
    label_one_ingredient();
    /// The list is in none of the languages that the review reads.
    label_unread();
    /// An ingredient is a gluten source that the rule does not allow.
    label_source(n: count, terms: text, regime: ["us" "codex" "eu" "canada" "argentina" "chile" "au_nz" "custom"], claim: text);
    /// What the rule says of it, taken in by the sentence before.
    label_source_rule(regime: ["us" "codex" "eu" "canada" "argentina" "chile" "au_nz" "custom"], claim: text);
    /// Oats of which nothing is known.
    label_oats();
    /// Words of which it must be asked.
    label_asked(n: count, terms: text);
    /// Gluten sources that the rule does not forbid.
    label_not_forbidden(n: count, terms: text, leave: ["amount" "processed" "unsaid" "unknown_claim"]);
    /// There is no list.
    label_no_list();
    /// Nothing was found.
    label_nothing();
    /// What the rule says of oats.
    label_oats_rule(regime: ["us" "codex" "eu" "canada" "chile"]);
    /// What the rule says of starch of wheat.
    label_starch_rule(regime: ["us" "codex" "eu" "canada" "argentina" "chile" "au_nz"]);
    /// What the register says of the oats.
    label_oats_register(oats: ["apart" "certified"]);
    /// Why words count.
    label_explained(terms: text, why: text);
    /// Why words count, with their grain.
    label_explained_of(terms: text, grain: text, why: text);
    /// More words than are explained.
    label_more();
    /// The languages in which the list was read.
    label_read_in(languages: text);
    /// A language that the review reads.
    label_language(language: ["english" "german" "spanish" "french" "italian"]);
    /// Whose reading the review is.
    label_opinion();
    /// What a label comes to, in the few words beside every verdict.
    label_judged(
        kind: ["source" "allowed" "oats" "ask" "unread" "no_list" "nothing"],
        term: text,
        named: ["none" "one" "more"],
        more: count,
    );
    /// The line below them.
    label_judged_why(why: ["source" "amount" "processed" "unsaid" "unknown_claim" "oats" "ask" "unread" "no_list" "nothing"]);
    /// A grain of the table of terms.
    label_grain(grain: ["wheat" "barley" "rye" "triticale" "oats" "wheat_or_barley" "barley_or_wheat" "wheat_or_rye" "wheat_rye_or_barley"]);
    /// Why a word of the built-in table counts.
    label_why(why: [
        "why_wheat" "why_flour" "why_milled_wheat" "why_old_wheat" "why_made_of_wheat" "why_pasta" "why_orzo" "why_gluten"
        "why_soba" "why_wheat_in_pieces" "why_wheat_kernel" "why_purified" "why_wheat_starch" "why_wheat_syrup"
        "why_barley_syrup" "why_baked" "why_triticale" "why_rye" "why_barley" "why_barley_fibre" "why_malt"
        "why_malt_distilled" "why_other_malt" "why_beer" "why_soft_drink" "why_brewers_yeast" "why_yeast_extract"
        "why_soy_sauce" "why_tamari" "why_barley_miso" "why_miso" "why_fu" "why_no_plant" "why_starch_in_the_us"
        "why_distilled" "why_unnamed" "why_oats" "why_oats_gluten_free" "why_grass" "why_another_plant" "why_buckwheat"
        "why_letters_of_malt" "why_enzymes" "why_sticky" "why_other_gluten" "why_statement" "why_no_gluten" "why_nothing"
        "why_plant_named" "why_wheat_german" "why_rye_german" "why_barley_german" "why_plant_german" "why_wheat_french"
        "why_rye_french" "why_barley_french" "why_plant_french" "why_wheat_spanish" "why_rye_spanish" "why_barley_spanish"
        "why_plant_spanish" "why_wheat_italian" "why_grano" "why_rye_italian" "why_barley_italian" "why_plant_italian"
        "why_declared" "why_pointer" "why_no_grain" "why_wheat_dextrin" "why_rice_miso" "why_sourdough" "why_coix"
        "why_bread" "why_cross"
    ]);
}
