# What is said of a label: on the sheet under "Label review", in the letter to the maker, in the newsletter.

## What the sentences are made of

# What stands for the words where the finding rests on the register and not on a word of the list.
label_one_ingredient = One ingredient

# The grain of a word, in brackets after it.
label_grain = { $grain ->
    [wheat] wheat
    [barley] barley
    [rye] rye
    [triticale] triticale
    [oats] oats
    [wheat_or_barley] wheat or barley
    [barley_or_wheat] barley or wheat
    [wheat_or_rye] wheat or rye
   *[wheat_rye_or_barley] wheat, rye or barley
}

# A language in which the review reads lists.
label_language = { $language ->
    [english] English
    [german] German
    [spanish] Spanish
    [french] French
   *[italian] Italian
}

# What the rule says of a gluten source as an ingredient. 21 CFR 101.91(a)(3); CXS 118-1979, 2.1.1; Food and Drug Regulations,
# B.24.018; Resolución Conjunta 32/2023; Reglamento Sanitario de los Alimentos, 516 to 518; Standard 1.2.7.
label_source_rule = { $regime ->
    [us] Unless it was processed to remove gluten, 21 CFR 101.91 does not allow it as an ingredient of a food sold as “{ $claim }”, whatever the test found.
    [codex] Unless it was specially processed to remove gluten, Codex CXS 118 does not allow it as an ingredient of a food sold as “{ $claim }”, whatever the test found.
    [eu] Under Regulation (EU) No 828/2014 it is not allowed as an ingredient of a food sold as “{ $claim }”, whatever the test found.
    [canada] Under B.24.018 of the Food and Drug Regulations it is not allowed as an ingredient of a food sold as “{ $claim }”, whatever the test found.
    [argentina] Under Resolución Conjunta 32/2023 it is not allowed as an ingredient of a food sold as “{ $claim }”, whatever the test found.
    [chile] Under the Reglamento Sanitario de los Alimentos it is not allowed as an ingredient of a food sold as “{ $claim }”, whatever the test found.
    [au_nz] Under Standard 1.2.7 of the Food Standards Code it is not allowed as an ingredient of a food sold as “{ $claim }”, whatever the test found.
   *[custom] Under the programme’s rule it is not allowed as an ingredient of a food sold as “{ $claim }”, whatever the test found.
}

## The finding

# The list is in none of the languages, or too little of it is.
label_unread = We could not read this list: none of it, or too little, is in English, German, Spanish, French or Italian. It says nothing for or against the food until somebody has read it.

# A gluten source that the rule does not allow with this claim.
label_source = { $n ->
    [one] { $terms } names a gluten source. { label_source_rule }
   *[other] { $terms } name a gluten source. { label_source_rule }
}

# Oats, and the register says nothing of how they were kept apart. R5 and like antibodies do not see oats.
label_oats = The list names oats, and we have nothing on record about how they were grown and milled. Oats pick up wheat, rye and barley easily; the test sees those three and not oats themselves.

# Words that may or may not name a gluten source.
label_asked = { $terms }: whether this is a gluten source depends on how it was made. That is a question to the maker, not a result.

# Gluten sources that the rule does not forbid. "amount": Regulation (EU) No 828/2014, Annex A, limits the amount alone.
# "processed": claims such as "very low gluten". "unsaid": a limit of the programme's own. "unknown_claim": the claim is not settled.
label_not_forbidden = { $leave ->
    [amount] { $n ->
        [one] { $terms }: a gluten source that this claim rule does not forbid. Regulation (EU) No 828/2014 asks for the amount of gluten alone.
       *[other] { $terms }: gluten sources that this claim rule does not forbid. Regulation (EU) No 828/2014 asks for the amount of gluten alone.
    }
    [processed] { $n ->
        [one] { $terms }: a gluten source that this claim rule does not forbid. Foods with this claim are made of grain that was processed to reduce gluten.
       *[other] { $terms }: gluten sources that this claim rule does not forbid. Foods with this claim are made of grain that was processed to reduce gluten.
    }
    [unsaid] { $n ->
        [one] { $terms }: a gluten source. The programme’s own rule sets a limit and says nothing about ingredients.
       *[other] { $terms }: gluten sources. The programme’s own rule sets a limit and says nothing about ingredients.
    }
   *[unknown_claim] { $n ->
        [one] { $terms }: a gluten source. What the package claims about gluten is not settled, so that no rule about its ingredients is applied.
       *[other] { $terms }: gluten sources. What the package claims about gluten is not settled, so that no rule about its ingredients is applied.
    }
}

# The register has no list of ingredients.
label_no_list = No ingredient list is on record for this product, so there was nothing to review.

# The list was read, and nothing was found.
label_nothing = We found no term in the list that names a gluten source.

## What the rule says besides

# Where the list names oats. 21 CFR 101.91; CXS 118-1979, footnote 1; Regulation (EU) No 828/2014, Annex B; SOR/2015-114.
label_oats_rule = { $regime ->
    [us] Oats are no gluten grain in 21 CFR 101.91; the food must still stay below 20 ppm.
    [codex] Codex CXS 118 leaves it to each country whether oats are allowed.
    [eu] Under Regulation (EU) No 828/2014 oats must be produced so that other grain is kept out, and stay within 20 mg/kg.
    [canada] Canada allows oats that were specially produced, hold no more than 20 ppm gluten of other grain, and are called gluten-free oats (SOR/2015-114).
   *[chile] Whether Chile’s rule allows oats is not settled.
}

# Where the list names starch of wheat. The same sources, and Standard 1.2.7, Resolución Conjunta 32/2023, article 518.
label_starch_rule = { $regime ->
    [us] Under 21 CFR 101.91 wheat starch is allowed if it was processed to remove gluten and the food stays below 20 ppm; where the label says “wheat”, it must add that the wheat was processed to meet the rule.
    [codex] Codex CXS 118 allows wheat starch that was specially processed to remove gluten, within 20 mg/kg.
    [eu] Regulation (EU) No 828/2014 does not forbid wheat starch in a gluten-free food; the amount of gluten decides.
    [canada] B.24.018 allows no gluten protein of wheat as an ingredient.
    [argentina] Resolución Conjunta 32/2023 allows at most 10 mg/kg of gluten in a food with this claim.
    [chile] The Reglamento Sanitario de los Alimentos allows at most 5 mg/kg of gluten in a food with this claim.
   *[au_nz] Standard 1.2.7 allows no detectable gluten in a food sold as gluten-free.
}

# Where the register says how the oats were kept apart.
label_oats_register = { $oats ->
    [apart] Our register says that the oats were grown and milled apart from other grain. The test doesn’t see oats themselves.
   *[certified] Our register says that the product’s certifier covers the oats. The test doesn’t see oats themselves.
}

## Why

# Why words count; $why is a whole sentence.
label_explained = { $terms }: { $why }

# The same with the grain.
label_explained_of = { $terms } ({ $grain }): { $why }

# More words than a sheet has room to explain.
label_more = The data files name the rest.

# In which languages the list was read.
label_read_in = The list was read in { $languages }.

# Marks the review as an opinion (ISO/IEC 17025:2017, 7.8.7, of a laboratory's own reports).
label_opinion = This is our reading, not a result of the lab.

## Beside the verdict

# What the label comes to, in few words: in a block beside that of the verdict at the head of the sheet, and beside the verdict in
# every list. $term is the first word in question, as printed on the package; $more counts the others.
label_judged = { $kind ->
    [source] { $named ->
        [one] Label names { $term }
        [more] Label names { $term } and { $more } more
       *[none] Label names a gluten source
    }
    [allowed] { $named ->
        [more] Label names { $term } and { $more } more (not forbidden)
       *[other] Label names { $term } (not forbidden)
    }
    [oats] Label: oats of unknown origin
    [ask] { $named ->
        [one] Label unclear: { $term }
        [more] Label unclear: { $term } and { $more } more
       *[none] Label unclear
    }
    [unread] Label not read yet
    [no_list] No label on record
   *[nothing] Label: nothing found
}

# In the block below these words.
label_judged_why = { $why ->
    [source] The rule doesn’t allow such an ingredient, whatever the test found.
    [amount] The rule for this claim limits the amount of gluten, not the ingredients.
    [processed] A food with this claim may be made of grain processed to reduce gluten.
    [unsaid] The programme’s own rule says nothing about ingredients.
    [unknown_claim] What the package claims isn’t settled, so no rule is applied.
    [oats] We have nothing on record about how they were grown and milled.
    [ask] Whether that is a gluten source is a question to the maker.
    [unread] None of it, or too little, is in a language that we read.
    [no_list] There was no list of ingredients to review.
   *[nothing] None of the words that we look for stands in the list.
}

## The table of terms

# Why a word counts, by the word that the table has in its column "why". What must be asked is asked of the maker, not here.
label_why = { $why ->
    [why_wheat] Wheat is a gluten grain.
    [why_flour] Flour without a plant’s name is wheat flour.
    [why_milled_wheat] A milled form of wheat unless another plant is named.
    [why_old_wheat] An old form of wheat, a gluten grain however it is marketed.
    [why_made_of_wheat] Made of wheat unless another plant is named.
    [why_pasta] Pasta without a plant’s name is made of wheat.
    [why_orzo] A pasta of wheat; in Italian, barley.
    [why_gluten] Gluten itself.
    [why_soba] Soba often mixes buckwheat with wheat.
    [why_wheat_in_pieces] Wheat protein in pieces: a sandwich assay reports it too low.
    [why_wheat_kernel] Part of the wheat kernel.
    [why_purified] May be purified so far that little protein is left.
    [why_wheat_starch] Starch of wheat keeps gluten unless it was processed to remove it.
    [why_wheat_syrup] Refined from wheat starch; exempt from allergen naming in Europe. The limit still applies.
    [why_barley_syrup] Refined from barley starch; exempt from allergen naming in Europe. The limit still applies.
    [why_baked] Baked goods are of wheat flour unless they are declared gluten-free.
    [why_triticale] A cross of wheat and rye, named as a gluten grain.
    [why_rye] Rye is a gluten grain.
    [why_barley] Barley is a gluten grain.
    [why_barley_fibre] A fibre from barley.
    [why_malt] Malt without a plant’s name is malted barley.
    [why_malt_distilled] Distilled, but of malted barley.
    [why_other_malt] The grain has no gluten, but enzymes of barley may have been used.
    [why_beer] Brewed of malted barley or wheat.
    [why_soft_drink] A soft drink.
    [why_brewers_yeast] Spent brewing yeast holds grain protein; yeast grown on sugar beet does not.
    [why_yeast_extract] May be made of spent brewer’s yeast.
    [why_soy_sauce] Usually brewed with wheat.
    [why_tamari] Often brewed without wheat but not always.
    [why_barley_miso] Fermented with barley.
    [why_miso] May be fermented with barley or wheat.
    [why_fu] In Japanese cooking, wheat gluten.
    [why_no_plant] The plant is not named.
    [why_starch_in_the_us] The plant is not named. In the United States plain starch is of maize, and wheat must be named.
    [why_distilled] Distilled: protein stays behind in the still.
    [why_unnamed] May carry wheat or barley that is not named.
    [why_oats] Oats are often grown, moved and milled with gluten grains.
    [why_oats_gluten_free] The package calls its oats gluten-free; the programme holds no proof of it unless the register does.
    [why_grass] The leaf has no gluten, but seeds may be carried over.
    [why_another_plant] Another plant, or a country.
    [why_buckwheat] Not a wheat.
    [why_letters_of_malt] Shares only letters with malt.
    [why_enzymes] Enzymes of barley may have been used.
    [why_sticky] Glutinous means sticky.
    [why_other_gluten] The protein of maize or rice is no gluten in this sense.
    [why_statement] A statement about the food and no ingredient.
    [why_no_gluten] A food without gluten of its own.
    [why_nothing] Has nothing to do with gluten.
    [why_plant_named] Another plant is named.
    [why_wheat_german] Wheat, in German.
    [why_rye_german] Rye, in German.
    [why_barley_german] Barley or malt, in German.
    [why_plant_german] A plant without gluten, in German.
    [why_wheat_french] Wheat, in French.
    [why_rye_french] Rye, in French.
    [why_barley_french] Barley or malt, in French.
    [why_plant_french] A plant without gluten, in French.
    [why_wheat_spanish] Wheat, in Spanish.
    [why_rye_spanish] Rye, in Spanish.
    [why_barley_spanish] Barley or malt, in Spanish.
    [why_plant_spanish] A plant without gluten, in Spanish.
    [why_wheat_italian] Wheat, in Italian.
    [why_grano] Wheat in Italian, any grain in Spanish.
    [why_rye_italian] Rye, in Italian.
    [why_barley_italian] Barley or malt, in Italian.
    [why_plant_italian] A plant without gluten, in Italian.
    [why_declared] The package declares gluten.
    [why_pointer] A pointer to the list of ingredients and no ingredient.
    [why_no_grain] The grain is not named.
    [why_wheat_dextrin] Refined from wheat; little protein is left where it was purified.
    [why_rice_miso] Fermented with rice, but some is made with barley.
    [why_sourdough] The grain of the sourdough is not named.
    [why_coix] A grass called barley that is none (Coix).
    [why_bread] Made of wheat flour unless another plant is named or it is declared gluten-free.
   *[why_cross] A cross of wheat and rye, or of wheat and barley.
}
