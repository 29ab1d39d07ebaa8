# How was tested and decided, and where the figures come from.

## How we tested and decided (the sheet)

# The assay in the lab's words, and how often the programme has each package extracted.
method_assay = { $times ->
    [one] Assay: { $assays }. Each package is to be extracted once.
    [2] Assay: { $assays }. Each package is to be extracted twice.
   *[other] Assay: { $assays }. Each package is to be extracted { $spelt } times.
}

# When extractions agree; the summary has the formula, and the sheet a sum worked out.
method_agreement = Extractions agree if they lie no further apart than repeats of one material may (ISO 5725-6; the formula is in our summary).

# How often sound packages are found to disagree, where one does; in the summary always.
method_false_alarm = { $packages ->
    [one] A sound package is found to disagree in about { $chance } of all cases, by chance alone.
   *[other] At least one of { $spelt } sound packages is found to disagree in about { $chance } of all cases, by chance alone.
}

# What a package's result is, and what "<n" means.
method_result = A package’s result is the mean of its extractions; “<n” is any value below n.

# That nothing is rounded first, and that one package decides.
method_one_decides = { $rule ->
    [passes] Nothing is rounded first. One package above the limit decides.
    [detection] Nothing is rounded first. One package that is positive for gluten decides.
   *[fails] Nothing is rounded first. One package at or above the limit decides.
}

# Simple acceptance (ILAC-G8:09/2019, 4.2.1) and its risk.
method_simple = No uncertainty is added or taken off (simple acceptance, ILAC-G8): a result at the limit itself is on the wrong side in up to half of all cases.

# Guard bands (ILAC-G8:09/2019, 4.2.2); the uncertainty is a setting of the programme's.
method_guarded = A result decides only where it still does with { $share } added or taken off: the expanded uncertainty (k = 2) that this programme reckons with (guard band, ILAC-G8).

# Where the rule knows no limit.
method_detection = Every figure that the laboratory gives counts as a detection, however uncertain it is.

# Taken in by the next one.
method_limit_source = { $law ->
    [us] 21 CFR 101.91
    [codex] Codex standard CXS 118
    [eu] Regulation (EU) No 828/2014
    [uk] Regulation (EU) No 828/2014 as kept in UK law
    [canada] Health Canada’s position on B.24.018 of the Food and Drug Regulations
    [argentina] Resolución Conjunta 32/2023
    [chile] article 518 of the Reglamento Sanitario de los Alimentos
    [au_nz] the Food Standards Code, Schedule 4
   *[custom] the programme’s own rule
}

# The limit, as its law words it. "detection": Food Standards Code 1.2.7, where $limit is the assay's limit of detection.
method_limit = { $rule ->
    [passes] Limit: no more than { $limit } ({ method_limit_source }).
    [detection] The claim asks for no detectable gluten (Food Standards Code, Standard 1.2.7); the test detects from { $limit } on (LOD).
   *[fails] Limit: less than { $limit } ({ method_limit_source }).
}

# Whose the verdict is: a sheet that passes a lab's figures on must not look like the lab's own report (ISO/IEC 17025:2017, 7.8.6,
# 7.8.7, and the conditions of accreditation).
method_own = The verdict is ours: the lab has not seen it, and its accreditation does not cover it.

## To bear in mind

# The label names barley as grain, and a sandwich R5 assay gave a figure (J Agric Food Chem 65:2155, 2017).
caution_barley = A sandwich R5 assay can report barley gluten too high, about two to six times.

# Oats: R5 does not see them, and grain in them lies in single kernels (Food Chem 240:391, 2018).
caution_oats = In oats the test sees only the other grain among them, which lies unevenly.

# Tannins bind gluten; skimmed milk powder in the extraction is the remedy.
caution_tannins = Polyphenols of cocoa, chestnut, buckwheat and the like bind gluten and can lower a figure; the lab does not say that it added skimmed milk powder against that.

# The cocktail extraction frees gluten that heat has set (Eur J Gastroenterol Hepatol 17:1053, 2005).
caution_no_cocktail = The lab does not name the cocktail extraction, without which heated food can give figures that are too low.

# A competitive assay where the food is neither fermented nor hydrolysed.
caution_competitive = A competitive assay is made for proteins in pieces, not for whole gluten.

# The label names what is fermented or hydrolysed; $terms are up to three of its words.
caution_pieces = The label names { $terms }: in what is fermented or hydrolysed a sandwich assay can miss gluten, so that a low figure shows less than it seems to.

## Where the figures come from

# A lab file. $first and $last are days as digits. What a report must carry, and a sheet that passes it on: ISO/IEC 17025:2017, 7.8.2.
method_source = { $lab }{ $reported ->
    [yes] , report { $report }
   *[no] { "" }
}{ $tested ->
    [day] , tested { $first }.
    [days] , tested { $first } to { $last }.
   *[no] .
}

# The lab's postal address.
method_address = Address: { $address }.

# When the lab received the packages; $condition is in the lab's words.
method_received = { $described ->
    [yes] Received { $day } ({ $condition }).
   *[no] Received { $day }.
}

# When the report was issued.
method_issued = Report issued { $day }.

# The lowest amount given as a number, and the lowest that is detected.
method_lowest = LLOQ { $lloq }, LOD { $lod }.

# In the lab's words.
method_uncertainty = Uncertainty as the lab gives it: { $stated }.

# Whether the lab says that it is accredited for this test.
method_accredited = { $accredited ->
    [yes] The lab says that it is accredited for this test.
   *[no] The lab says that it is not accredited for this test.
}

# The lab's remarks, deviations from its method among them; $remarks are quoted.
method_remarks = The lab remarks: { $remarks }.

# Words of the lab's.
method_quoted = “{ $words }”

# A thing in the list of the next one.
method_thing = { $thing ->
    [address] the lab’s address
    [report] report number
    [received] day received
    [tested] day tested
    [uncertainty] uncertainty
   *[accreditation] accreditation
}

# What the lab does not state: said, and not passed over.
method_not_stated = Not stated: { $things }.

# The file's name.
method_file = File { $file }.

# Where in the file the figures stand, and the beginning and end of its checksum.
method_rows = { $rows ->
    [one] Row { $first }. SHA-256 { $sha256 }.
    [more] Rows { $first } to { $last }. SHA-256 { $sha256 }.
   *[none] No rows. SHA-256 { $sha256 }.
}

# A certificate of the lab's or a photograph of a package.
method_exhibit = { $kind ->
    [certificate] Certificate { $file }. SHA-256 { $sha256 }.
   *[photograph] Photograph { $file }. SHA-256 { $sha256 }.
}

# What every sheet, the newsletter and the web pages say last. $name is the authority of the settings, without "the".
method_caution = { $regulator ->
    [named] This is not medical advice. Ask your physician or dietitian what it means for you. A gluten result says nothing about wheat allergy. Whether a food may be sold as gluten-free is for the { $name } to decide; its word goes before ours. Please don’t use our results in advertising.
   *[none] This is not medical advice. Ask your physician or dietitian what it means for you. A gluten result says nothing about wheat allergy. Whether a food may be sold as gluten-free is for the authorities to decide; their word goes before ours. Please don’t use our results in advertising.
}

## What a sheet's PDF carries

# The words of the sheet as data.
carried_data = Everything that this sheet says, as data

# The case.
carried_case = What this sheet rests on: the registers’ rows, the rule, the readings with their places, the verdict

# A lab file as it came.
carried_whole = The lab’s file, as it came. SHA-256 { $sha256 }

# The cells of a lab file that are used for the sheet.
carried_excerpt = The cells of the lab’s file that are used here. SHA-256 of the whole file { $sha256 }

## How we test and decide (the summary)

# The heads of the part.
practice_head = { $passage ->
    [buying] Buying
    [testing] Testing
    [agreement] Agreement
    [result] One result a package
    [misses] What the test can miss
    [rule] The rule
    [deciding] Deciding
    [intervals] Intervals
    [reply] Right of reply
    [about] About the programme
   *[change] What would change a verdict
}

# How many packages the programme buys. How and where they are bought stands in the registers of each.
practice_buying = { $packages ->
    [one] One package of each product is bought, and sent to the lab under a code.
   *[other] { $spelt } packages of each product are bought, and sent to the lab each under a code.
}

# What is kept of each package, as the settings have it: "the ground rest of each package, for six months".
practice_kept = We keep { $kept }.

# How often each package is extracted.
practice_extractions = { $times ->
    [one] Each package is to be extracted once.
    [2] Each package is to be extracted twice; each extraction is measured on its own.
   *[other] Each package is to be extracted { $spelt } times; each extraction is measured on its own.
}

# The labs, divided by semicolons.
practice_labs = { $n ->
    [one] Lab: { $labs }.
   *[other] Labs: { $labs }.
}

# The assays in the labs' words, divided by semicolons.
practice_assays = { $n ->
    [one] Assay: { $assays }.
   *[other] Assays: { $assays }.
}

# The limits of quantification.
practice_lowest = { $n ->
    [one] The smallest amount given as a number is { $amounts }.
   *[other] The smallest amounts given as a number are { $amounts }.
}

# When extractions agree (ISO 5725-6:1994, 5.2); the repeatability is a setting of the programme's.
practice_agreement = Extractions of one package agree where the gap between them is no more than f(n) times s. Here f(2) is 2.8, f(3) 3.3 and f(4) 3.6 (ISO 5725-6), s is the square root of (q/10)² + (r·m)², q the smallest amount given as a number, m the mean, and r the repeatability of one extraction that this programme assumes, { $share }. A package whose extractions disagree is never counted as within the limit.

# What a package's result is.
practice_result = { $rule ->
    [detection] The mean of its extractions. Where one of them is too small to measure, the mean is a range. Nothing is rounded before a decision, and no printed figure is rounded across the limit of detection of { $limit }.
   *[fails] The mean of its extractions. Where one of them is too small to measure, the mean is a range. Nothing is rounded before a decision, and no printed figure is rounded across { $limit }.
}

# What the test can miss (J AOAC 98:1346, 2015; Food Chem 216:170, 2017).
practice_misses = An assay for wheat, rye and barley gluten does not see oats. In fermented or hydrolysed food a sandwich assay reads too low, so that a low figure of it decides nothing there. Gluten that lies in a few crumbs can be missed by any portion that leaves them out.

# The rule of the programme's regime.
practice_rule = { $law ->
    [us] United States, 21 CFR 101.91: below 20 ppm. A food at 20 ppm does not keep it.
    [codex] Codex Alimentarius, CXS 118-1979: not above 20 mg/kg.
    [eu] European Union, Implementing Regulation (EU) No 828/2014: no more than 20 mg/kg.
    [uk] United Kingdom, retained Implementing Regulation (EU) No 828/2014: no more than 20 mg/kg.
    [canada] Canada, Food and Drug Regulations B.24.018 and Health Canada’s position on it: not above 20 ppm from cross-contact.
    [argentina] Argentina, Código Alimentario Argentino: at most 10 mg/kg.
    [chile] Chile, Reglamento Sanitario de los Alimentos, article 518: not above 5 mg/kg.
    [au_nz] Australia and New Zealand, Food Standards Code, Standard 1.2.7: no detectable gluten, which is no limit on an amount. Every figure that the lab gives is a detection; “<n” is none where n is not above the assay’s limit of detection (LOD), { $limit } unless the lab states its own.
   *[custom] { $rule ->
        [passes] The programme’s own limit: at or below { $limit }.
       *[fails] The programme’s own limit: below { $limit }.
    }
}

# How a package is decided. $share is, with "guarded", the expanded uncertainty of the settings, and otherwise the chance from which
# on a sheet tells it (JCGM 106:2012, 7.2).
practice_package = { $rule ->
    [detection] A package counts as positive for gluten where the lab gives a figure, and as negative where every one of its results lies below the limit of detection. How uncertain a figure is does not enter.
    [passes] { $decision ->
        [guarded] A package counts as above the limit only where its result less { $share } is, and as at or below the limit only where its result plus { $share } is (the expanded uncertainty, k = 2, that this programme reckons with). Between the two it is inconclusive.
       *[simple] A package counts as above the limit where its result is. The figure is held against the limit as it stands; no uncertainty is added or taken off. A result at the limit itself is on the wrong side in up to half of all cases; where the chance of that is more than { $share }, or the result lies in the hatched band of the sheet, the sheet says it where that bears on the verdict.
    }
   *[fails] { $decision ->
        [guarded] A package counts as at or above the limit only where its result less { $share } is, and as below the limit only where its result plus { $share } is (the expanded uncertainty, k = 2, that this programme reckons with). Between the two it is inconclusive.
       *[simple] A package counts as at or above the limit where its result is. The figure is held against the limit as it stands; no uncertainty is added or taken off. A result at the limit itself is on the wrong side in up to half of all cases; where the chance of that is more than { $share }, or the result lies in the hatched band of the sheet, the sheet says it where that bears on the verdict.
    }
}

# How a product is decided.
practice_product = { $rule ->
    [passes] One package above the limit decides the product. A product is at or below the limit only where every package is. Everything else is no verdict.
    [detection] One package that is positive for gluten decides the product. A product is negative for gluten only where every package is. Everything else is no verdict.
   *[fails] One package at or above the limit decides the product. A product is below the limit only where every package is. Everything else is no verdict.
}

# The intervals of the shares (Clopper-Pearson).
practice_intervals = Shares come with exact two-sided 95 % intervals (Clopper-Pearson). They would hold if products were picked at random, and take each product once, by its latest round with a verdict. An undecided package may be on either side: the lower end takes it for within the limit, the upper end for over it. For 0 of n packages, if they were a random pick, the one-sided 95 % upper bound is given: 1 less the n-th root of 0.05.

# Taken in by the next message.
reply_time = { $reply_days ->
    [one] 1 day
   *[other] { $reply_days } days
}

publish_time = { $publish_days ->
    [one] 1 day
   *[other] { $publish_days } days
}

# The maker's right of reply; the days are settings of the programme's.
practice_reply = { $rule ->
    [passes] The maker of a product that is above the limit, or whose label names a gluten source that the rule does not allow, is told, gets the figures, and has { reply_time } to answer. The sheet is published once the maker has answered, or { publish_time } after that notice. What was issued before its time says so. Replies are printed as they were written.
    [detection] The maker of a product that is positive for gluten, or whose label names a gluten source that the rule does not allow, is told, gets the figures, and has { reply_time } to answer. The sheet is published once the maker has answered, or { publish_time } after that notice. What was issued before its time says so. Replies are printed as they were written.
   *[fails] The maker of a product that is at or above the limit, or whose label names a gluten source that the rule does not allow, is told, gets the figures, and has { reply_time } to answer. The sheet is published once the maker has answered, or { publish_time } after that notice. What was issued before its time says so. Replies are printed as they were written.
}

# What would change a verdict.
practice_change = A correction, a repeated test or further packages of the same round. The sheet then gets a new revision, which names the one it replaces, and says what changed.
