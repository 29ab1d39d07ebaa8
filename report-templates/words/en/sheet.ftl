# What a results sheet says: verdict, ruler, packages, what the result says and does not say.

## The head, the foot and the headings

# In the head, before the number of the sheet and its revision.
sheet_kind = Results sheet

# In the foot, before the address to which mistakes are reported.
sheet_mistake = Found a mistake?

# The title of the PDF.
sheet_title = { $branded ->
    [yes] Test results: { $product }, { $brand }. Sheet { $number }
   *[no] Test results: { $product }. Sheet { $number }
}

# Under the name of the product. $claim is as on the package.
claim_sold = { $known ->
    [yes] Sold as “{ $claim }”.
   *[no] What the package claims is not on record.
}

# Likewise. A first round is not counted. $when is a day or two.
claim_bought = { $later ->
    [yes] { $dated ->
        [day] { $packages ->
            [one] Round { $round }: 1 package bought { $when }.
           *[other] Round { $round }: { $packages } packages bought { $when }.
        }
        [days] { $packages ->
            [one] Round { $round }: 1 package bought { $when }.
           *[other] Round { $round }: { $packages } packages bought { $when }.
        }
       *[no] { $packages ->
            [0] Round { $round }: no package is on record.
            [one] Round { $round }: 1 package bought.
           *[other] Round { $round }: { $packages } packages bought.
        }
    }
   *[no] { $dated ->
        [day] { $packages ->
            [one] 1 package bought { $when }.
           *[other] { $packages } packages bought { $when }.
        }
        [days] { $packages ->
            [one] 1 package bought { $when }.
           *[other] { $packages } packages bought { $when }.
        }
       *[no] { $packages ->
            [0] No package is on record.
            [one] 1 package bought.
           *[other] { $packages } packages bought.
        }
    }
}

# Likewise.
claim_barcode = Barcode { $barcode }.

# Likewise; the certifier's name as on the package.
claim_certifier = The package names { $certifier } as certifier.

# Likewise, where the name has emoji, which the fonts lack.
claim_pictures = The pictures in its name are left out here.

# Heading of the ruler and the table.
results_heading = The results, package by package

# Heading of what so few packages say.
says_heading = What this result says

# Heading beside it.
says_not_heading = What it does not say

# Heading of the label review. It is a reading of words by the programme, an opinion in the sense of ISO/IEC 17025:2017,
# 7.8.7, and no test.
label_heading = Label review

# Heading of what passed between programme and maker.
reply_heading = The maker’s reply

# Heading of how was tested and decided.
method_heading = How we tested and decided

# Heading of the lab files.
sources_heading = Where the numbers come from

# Heading of the caution.
note_heading = Please note

# Heading of the list of revisions.
revisions_heading = Revisions

# Before the list of ingredients as it stands on the package.
label_ingredients = Ingredients as printed:

# Before "may contain" and the like, quoted from the package.
label_precautionary = Precautionary words:

# After it, where the register has none.
label_none_on_record = none on record.

## The verdict

# In the block, where a package is over the limit. See limit_over for the three rules.
verdict_over = { $rule ->
    [passes] Above { $limit }
    [detection] Gluten detected
   *[fails] At or above { $limit }
}

# In the block, where every package is within it.
verdict_within = { $rule ->
    [passes] At or below { $limit }
    [detection] No gluten detected (LOD { $limit })
   *[fails] Below { $limit }
}

# In the block, where the results do not say.
verdict_none = No verdict

# Under the verdict. "guarded": a package counts as over only where it still is with the expanded uncertainty taken off
# (ILAC-G8:09/2019), so that others may have figures over the limit, too.
count_over = { $packages ->
    [one] The 1 package tested { over_the_limit }{ $guarded ->
        [yes] {" "}even with the test’s uncertainty taken off
       *[no] { "" }
    }.
   *[other] { $over } of { $packages } packages tested { over_the_limit }{ $guarded ->
        [yes] {" "}even with the test’s uncertainty taken off
       *[no] { "" }
    }.
}

# Under the verdict.
count_within = { $packages ->
    [one] The 1 package tested { within_the_limit }{ $guarded ->
        [yes] {" "}even with the test’s uncertainty added
       *[no] { "" }
    }.
    [2] Both packages tested { within_the_limit }{ $guarded ->
        [yes] {" "}even with the test’s uncertainty added
       *[no] { "" }
    }.
   *[other] All { $packages } packages tested { within_the_limit }{ $guarded ->
        [yes] {" "}even with the test’s uncertainty added
       *[no] { "" }
    }.
}

# Under "no verdict".
count_unresolved = { $packages ->
    [one] The 1 package has no result that decides.
   *[other] { $undecided ->
        [one] 1 of { $packages } packages has no result that decides.
       *[other] { $undecided } of { $packages } packages have no result that decides.
    }
}

# Likewise, under guarded decisions.
count_close = { $packages ->
    [one] The 1 package is too close to the limit to call.
   *[other] { $undecided ->
        [one] 1 of { $packages } packages is too close to the limit to call.
       *[other] { $undecided } of { $packages } packages are too close to the limit to call.
    }
}

# Likewise, where fewer packages were tested than the programme asks for.
count_short = { $tested ->
    [0] No package has a result.
    [one] 1 of { $asked } packages has a result.
   *[other] { $tested } of { $asked } packages have a result.
}

# Likewise, where the assay cannot see all gluten in a food of this kind.
count_unfit = The test can’t decide for this kind of food.

# Likewise, where claim, processing or a row of the registers is not known.
count_open = Something has to be settled before anything is decided.

# Beside the verdict: the one package over the limit. "disagree": its extractions differ too much for one figure.
over_one = { $kind ->
    [range] One package measured { $figure }.
    [above] One package measured more than { $figure }.
    [disagree] { $rule ->
        [detection] The extractions of one package ({ $package }) differ too much to give one figure, but gluten was detected in it.
       *[other] The extractions of one package ({ $package }) differ too much to give one figure, but they put it { over_the_limit }.
    }
   *[mean] One package measured { $figure }.
}

# Likewise, several packages; $packages is their number in words.
over_several = { $highest ->
    [known] { $packages } packages tested { over_the_limit }; the highest measured { $figure }.
   *[unknown] { $packages } packages tested { over_the_limit }.
}

# After it: no package makes good for another, since the claim stands on each.
over_enough = { $rule ->
    [detection] One package with gluten detected is enough for this verdict.
   *[other] One package { over_the_limit } of { $limit } is enough for this verdict.
}

# After it, under guarded decisions: packages that are neither over nor within.
over_too_close = { $by ->
    [count] Too close to the limit to call: { $packages } packages.
   *[name] { $packages ->
        [one] Too close to the limit to call: package { $named }.
       *[other] Too close to the limit to call: packages { $named }.
    }
}

# After it: packages whose extractions disagree, are missing and the like.
over_unresolved = { $by ->
    [count] Without a result that decides: { $packages } packages.
   *[name] { $packages ->
        [one] Without a result that decides: package { $named }.
       *[other] Without a result that decides: packages { $named }.
    }
}

# Beside the verdict, where no package could be measured.
none_measured = { $packages ->
    [one] { $rule ->
        [detection] The package had too little gluten to measure: its result was below { $below }. The test detects gluten from { $limit } on.
       *[other] The package had too little gluten to measure: its result was below { $below }. The limit for this claim is { $limit }.
    }
   *[other] { $rule ->
        [detection] No package had enough gluten to measure: every result was below { $below }. The test detects gluten from { $limit } on.
       *[other] No package had enough gluten to measure: every result was below { $below }. The limit for this claim is { $limit }.
    }
}

# Beside the verdict, where gluten was measured in some or all packages. It speaks of results: a single extraction of them may
# have measured more.
measured_within = { $part ->
    [the_one] { $rule ->
        [detection] Gluten was measured in the one package, with a result that is no detection.
       *[other] Gluten was measured in the one package, with a result { within_the_limit } of { $limit }.
    }
    [all] { $packages ->
        [2] { $rule ->
            [detection] Gluten was measured in both packages, with results that are no detection.
           *[other] Gluten was measured in both packages, with results { within_the_limit } of { $limit }.
        }
       *[other] { $rule ->
            [detection] Gluten was measured in all { $packages } packages, with results that are no detection.
           *[other] Gluten was measured in all { $packages } packages, with results { within_the_limit } of { $limit }.
        }
    }
   *[some] { $measured ->
        [one] { $rule ->
            [detection] Gluten was measured in 1 of the { $packages } packages, with a result that is no detection.
           *[other] Gluten was measured in 1 of the { $packages } packages, with a result { within_the_limit } of { $limit }.
        }
       *[other] { $rule ->
            [detection] Gluten was measured in { $measured } of the { $packages } packages, with results that are no detection.
           *[other] Gluten was measured in { $measured } of the { $packages } packages, with results { within_the_limit } of { $limit }.
        }
    }
}

# After it.
measured_others = { $others ->
    [one] In the other it was below { $below }.
   *[other] In the others it was below { $below }.
}

# Beside "no verdict"; the causes follow, a sentence each.
cannot_tell = { $rule ->
    [detection] We can’t say whether this product has detectable gluten.
   *[other] We can’t say on which side of the limit of { $limit } this product is.
}

# Likewise, where the food is the cause.
cannot_show = { $rule ->
    [detection] The results can’t show whether this food has detectable gluten.
   *[other] The results can’t show on which side of the limit of { $limit } this food is.
}

# A cause. Up to four packages are named, more are counted.
cause_conflict = { $by ->
    [count] The lab’s reports differ about { $packages } packages.
   *[name] { $packages ->
        [one] The lab’s reports differ about package { $named }.
       *[other] The lab’s reports differ about packages { $named }.
    }
}

# Likewise (ISO 5725-6:1994, 5.2).
cause_disagree = { $by ->
    [count] The extractions of { $packages } packages disagree.
   *[name] { $packages ->
        [one] The extractions of package { $named } disagree.
       *[other] The extractions of packages { $named } disagree.
    }
}

# Likewise.
cause_incomplete = { $by ->
    [count] For { $packages } packages there are fewer usable extractions than the programme asks for.
   *[name] { $packages ->
        [one] Package { $named } has fewer usable extractions than the programme asks for.
       *[other] Packages { $named } have fewer usable extractions than the programme asks for.
    }
}

# Likewise.
cause_missing = { $by ->
    [count] No result has come for { $packages } packages.
   *[name] { $packages ->
        [one] No result has come for package { $named }.
       *[other] No result has come for packages { $named }.
    }
}

# Likewise: its bounds lie on both sides of the limit.
cause_either_side = { $by ->
    [count] The results of { $packages } packages may lie on either side.
   *[name] { $packages ->
        [one] The result of package { $named } may lie on either side.
       *[other] The results of packages { $named } may lie on either side.
    }
}

# Likewise, under guarded decisions (ILAC-G8:09/2019).
cause_too_close = { $by ->
    [count] The results of { $packages } packages are closer to the limit than the test’s uncertainty ({ $uncertainty }).
   *[name] { $packages ->
        [one] The result of package { $named } is closer to the limit than the test’s uncertainty ({ $uncertainty }).
       *[other] The results of packages { $named } are closer to the limit than the test’s uncertainty ({ $uncertainty }).
    }
}

# Where the packages' results are within the limit, or decide nothing, and single extractions are over it: no verdict hides one.
single_over = { $extractions ->
    [one] { $kind ->
        [above] One extraction measured more than { $figure }.
       *[figure] One extraction measured { $figure }.
    }
   *[other] { $kind ->
        [above] { $rule ->
            [detection] { $spelt } extractions detected gluten, the highest more than { $figure }.
           *[other] { $spelt } extractions measured { limit_over }, the highest more than { $figure }.
        }
       *[figure] { $rule ->
            [detection] { $spelt } extractions detected gluten, the highest { $figure }.
           *[other] { $spelt } extractions measured { limit_over }, the highest { $figure }.
        }
    }
}

# A package in the list of the sentence below.
near_limit_package = { $chance } for { $package } ({ $figure })

# Further packages in it, which are not named; $chance is the smallest of theirs.
near_limit_more = { $packages ->
    [one] { $chance } for one more
   *[other] { $chance } and above for { $packages } more
}

# Beside a verdict that rests on packages near the limit, under simple decisions: the chance that the true content is on the
# other side (JCGM 106:2012, 7.2), where one lies in the band drawn round it, or that is more than 5 %. "assumed" knows only the scatter within the lab, so that the
# chance is a least one.
near_limit = Close to the limit: the chance that the true content is { $side ->
    [over] { side_over }
   *[within] { side_within }
} is { $basis ->
    [lab] about { $packages }, by the lab’s uncertainty.
    [lab_k2] about { $packages }, by the lab’s uncertainty, taken as k = 2.
   *[assumed] at least about { $packages }, by the scatter that this programme assumes within a lab alone.
}

## The table

# Head of the packages' codes.
head_package = Package

# Head of the maker's lots.
head_lot = Lot

# Head of the dates as printed on the packages.
head_best_by = Best by

# Head of the day and place of purchase.
head_bought = Bought: date, shop

# Head over the extractions.
head_extractions = Extractions, { $unit }

# Head over the two columns of differences between extractions.
head_difference = Difference, { $unit }

# Under it.
head_found = found

# Under it.
head_allowed = allowed

# Head of the results; it may be set in two lines.
head_result = Package result, { $unit }

# In the place of a difference that is not known: every extraction is below what the test measures, or above. $bound has its sign.
cell_beyond = { $extractions ->
    [2] both { $bound }
   *[other] all { $bound }
}

# The name of a package's further row: what it holds. "first": the other of two reports that differ.
row_chapter = { $package }, { $event ->
    [first] { $extractions ->
        [one] reported as well: extraction { $numbers }
       *[other] reported as well: extractions { $numbers }
    }
    [again] { $extractions ->
        [one] reported again: extraction { $numbers }
       *[other] reported again: extractions { $numbers }
    }
    [repeat] { $extractions ->
        [one] repeat: extraction { $numbers }
       *[other] repeat: extractions { $numbers }
    }
    [further] { $extractions ->
        [one] further extraction { $numbers }
       *[other] further extractions { $numbers }
    }
   *[together] { $extractions ->
        [0] no extraction counts
        [one] the extraction that counts
        [2] both that count, together
       *[other] all { $extractions } that count, together
    }
}

# Under the table, where a figure stands in parentheses.
table_unused = In parentheses: reported, not used.

# Under the table. "decides": what they give together decides. "close": it does not, under guarded decisions. "open": its bounds
# lie on both sides.
note_straddles = { $standing ->
    [close] { $kind ->
        [range] { $package }: its extractions agree, but stand on both sides of the limit. Together they give { $figure }, too close to the limit to decide.
       *[mean] { $package }: its extractions agree, but stand on both sides of the limit. Their mean, { $figure }, is too close to it to decide.
    }
    [open] { $package }: its extractions agree, but stand on both sides of the limit. Together they give { $figure }, which does not decide.
   *[decides] { $kind ->
        [range] { $package }: its extractions agree, but stand on both sides of the limit. What they give together decides: { $figure }.
       *[mean] { $package }: its extractions agree, but stand on both sides of the limit. Their mean decides: { $figure }.
    }
}

# In the table, above their row: a person declared extractions a repeat of the test; $reason is that person's sentence.
note_repeat = { $extractions ->
    [one] { $package }: extraction { $numbers } is a repeat, decided by { $by } on { $day }. { $reason }
   *[other] { $package }: extractions { $numbers } are a repeat, decided by { $by } on { $day }. { $reason }
}

# Under the table: the lab reported more extractions than the programme asks for, and the register of corrections has no decision.
note_beyond = { $by ->
    [count] In { $packages } packages there are more extractions than the programme asks for ({ $asked }). The reason is not on record.
   *[name] { $named }: more extractions than the programme asks for ({ $asked }). The reason is not on record.
}

# In the table, below their row: two reports of one extraction differ.
note_conflict = { $package }: the lab’s reports differ on what stands here, and none of the figures is used. In { $unit }, { $reports }.

# One of them, as the note lists it.
note_conflict_report = extraction { $extraction } is { $figure } in { $file }, { $cell }

# In the table, below their row: a person set readings aside; $reason is that person's sentence.
note_set_aside = { $extractions ->
    [one] { $package }: extraction { $numbers } was set aside by { $by } on { $day }. { $reason }
   *[other] { $package }: extractions { $numbers } were set aside by { $by } on { $day }. { $reason }
}

# In the table, below their row: a lab reported more extractions than a document lists one by one.
note_left_out = { $package }: { $extractions ->
    [one] one further extraction is
   *[other] { $extractions } further extractions are
} not listed here{ $figures ->
    [yes] , from { $lowest } to { $highest } { $unit }
   *[no] { "" }
}. The data file extractions.csv has every one.

# Under the table, after the first that are named: extractions whose results cannot be read, or that have none.
note_more_unused = { $extractions ->
    [one] { $package }: one further extraction has no result that can be used.
   *[other] { $package }: { $extractions } further extractions have no result that can be used.
}

# Under the table: the lab withdrew a report, and another took its place; it is not named.
note_replaced = { $by ->
    [count] In { $packages } packages the lab replaced an earlier report. None of its figures is used here.
   *[name] { $named }: the lab replaced an earlier report. None of its figures is used here.
}

# Under the table: the lab gave a row, and in it what says that there is no result.
note_not_reported = { $empty ->
    [yes] { $package }, extraction { $extraction }: the lab gave a row without a result.
   *[no] { $package }, extraction { $extraction }: the lab gave a row without a result (“{ $written }”).
}

# Under the table: what the lab wrote cannot be read as a result.
note_unreadable = { $empty ->
    [yes] { $package }, extraction { $extraction }: what the lab reported reads as no result.
   *[no] { $package }, extraction { $extraction }: what the lab reported (“{ $written }”) reads as no result.
}

# Under the table.
note_range = { $by ->
    [count] In { $packages } packages an extraction is a bound, not a number, so that the result is a range.
   *[name] { $named }: an extraction is a bound, not a number, so that the result is a range.
}

# Under the table.
note_open_end = { $by ->
    [count] In { $packages } packages every extraction is above what the test measures, so that the result has no upper end.
   *[name] { $named }: every extraction is above what the test measures, so that the result has no upper end.
}

# Under the table: gluten is taken as twice the gliadin (CXS 118-1979, 5.1).
note_gliadin = { $all ->
    [yes] The lab reported gliadin. The figures here are twice the reported ones: gluten in { $unit }, as Codex CXS 118 counts it.
   *[no] { $by ->
        [count] The lab reported gliadin. The figures of { $packages } packages here are twice the reported ones: gluten in { $unit }, as Codex CXS 118 counts it.
       *[name] The lab reported gliadin. The figures of { $named } here are twice the reported ones: gluten in { $unit }, as Codex CXS 118 counts it.
    }
}

# Under the table: wells of one extract are no repeats of the test.
note_wells = Where the lab read an extraction in several wells, their mean is the extraction’s figure.

## What the result says, and what it does not

# Packages over the limit.
says_over = { $packages ->
    [one] { $rule ->
        [detection] In the 1 package we bought gluten was detected.
       *[other] { $guarded ->
            [yes] The 1 package we bought tested { limit_over }, even with the test’s uncertainty taken off.
           *[no] The 1 package we bought tested { limit_over }.
        }
    }
   *[other] { $rule ->
        [detection] Of the { $packages } packages we bought, { $over } tested positive for gluten.
       *[other] { $guarded ->
            [yes] Of the { $packages } packages we bought, { $over } tested { limit_over }, even with the test’s uncertainty taken off.
           *[no] Of the { $packages } packages we bought, { $over } tested { limit_over }.
        }
    }
}

# After it: the exact two-sided interval (Clopper and Pearson 1934). Its ends cover both outcomes of undecided packages.
says_share = { $undecided ->
    [0] If they were a random pick, the true share could be anywhere from { $lower } to { $upper } (95 % confidence).
   *[other] If they were a random pick, the true share could be anywhere from { $lower } to { $upper } (95 % confidence, whatever the undecided packages are).
}

# Every package below quantification. "lowest": that is the lowest figure that the assay gives; a lab may also say "below 19".
says_none_measured = { $lowest ->
    [yes] { $packages ->
        [one] The 1 package we bought tested below { $below }. That is the lowest answer this test gives. It doesn’t mean zero.
        [2] Both packages we bought tested below { $below }. That is the lowest answer this test gives. It doesn’t mean zero.
       *[other] All { $packages } packages we bought tested below { $below }. That is the lowest answer this test gives. It doesn’t mean zero.
    }
   *[no] { $packages ->
        [one] The 1 package we bought tested below { $below }. How far below, the lab doesn’t say. “Below” doesn’t mean zero.
        [2] Both packages we bought tested below { $below }. How far below, the lab doesn’t say. “Below” doesn’t mean zero.
       *[other] All { $packages } packages we bought tested below { $below }. How far below, the lab doesn’t say. “Below” doesn’t mean zero.
    }
}

# Every package within the limit.
says_within = { $packages ->
    [one] { $rule ->
        [detection] The 1 package we bought tested negative for gluten (LOD { $limit }).
       *[other] The 1 package we bought tested { limit_within }.
    }
    [2] { $rule ->
        [detection] Both packages we bought tested negative for gluten (LOD { $limit }).
       *[other] Both packages we bought tested { limit_within }.
    }
   *[other] { $rule ->
        [detection] All { $packages } packages we bought tested negative for gluten (LOD { $limit }).
       *[other] All { $packages } packages we bought tested { limit_within }.
    }
}

# After it, where every package has a result that ends somewhere.
says_highest = The highest package result was { $figure }.

# No verdict, and no package decides.
says_none_decides = { $packages ->
    [0] No package has been tested.
    [one] The 1 package we bought gave no result that decides.
    [2] Neither of the 2 packages we bought gave a result that decides.
   *[other] None of the { $packages } packages we bought gave a result that decides.
}

# No verdict though every figure is within the limit: the assay can miss gluten in such a food.
says_unfit = { $packages ->
    [one] { $rule ->
        [detection] The 1 package we bought tested negative for gluten. In this kind of food the test can miss gluten, so that doesn’t decide.
       *[other] The 1 package we bought gave a figure { limit_within }. In this kind of food the test can miss gluten, so it doesn’t decide.
    }
    [2] { $rule ->
        [detection] Both packages we bought tested negative for gluten. In this kind of food the test can miss gluten, so that doesn’t decide.
       *[other] Both packages we bought gave figures { limit_within }. In this kind of food the test can miss gluten, so they don’t decide.
    }
   *[other] { $rule ->
        [detection] All { $packages } packages we bought tested negative for gluten. In this kind of food the test can miss gluten, so that doesn’t decide.
       *[other] All { $packages } packages we bought gave figures { limit_within }. In this kind of food the test can miss gluten, so they don’t decide.
    }
}

# No verdict, and some packages are within the limit.
says_some_decide = { $rule ->
    [detection] Of the { $packages } packages we bought, { $decided } tested negative for gluten, and { $open } gave no result that decides.
   *[other] Of the { $packages } packages we bought, { $decided } tested { limit_within }, and { $open } gave no result that decides.
}

# On the sheet of an earlier round, once a later one is published. $rounds are sentences on these.
tested_again = It was tested again since. { $rounds }

# A later round does not undo an earlier one. $number is that of its sheet.
other_round = { $verdict ->
    [over] { $packages ->
        [one] In round { $round } ({ $number }), the 1 package tested { over_the_limit }.
       *[other] In round { $round } ({ $number }), { $over } of { $packages } packages tested { over_the_limit }.
    }
    [within] { $packages ->
        [one] In round { $round } ({ $number }), the 1 package tested { within_the_limit }.
        [2] In round { $round } ({ $number }), both packages tested { within_the_limit }.
       *[other] In round { $round } ({ $number }), all { $packages } packages tested { within_the_limit }.
    }
   *[none] In round { $round } ({ $number }), there was no verdict.
}

# Beside a verdict over the limit.
says_not_over = It doesn’t say that every package is like these, how the gluten got in, or that anyone was careless. Another lot may test differently.

# Beside a verdict within it: the one-sided upper bound for none of n (exact binomial).
says_not_within = { $rule ->
    [detection] It doesn’t prove that every package is without detectable gluten. Even in a random pick with 0 of { $packages } positive for gluten, up to { $upper } of all packages could still be (95 % confidence).
   *[other] It doesn’t prove that every package is { within_the_limit }. Even in a random pick with 0 of { $packages } { over_the_limit }, up to { $upper } of all packages could still be (95 % confidence).
}

# Likewise, where no share can be given.
says_not_proven = { $rule ->
    [detection] It doesn’t prove that every package is without detectable gluten.
   *[other] It doesn’t prove that every package is { within_the_limit }.
}

# Beside "no verdict".
says_not_none = { $rule ->
    [detection] It gives no answer either way. It doesn’t say that the product is without detectable gluten, and it doesn’t say that it has any.
   *[other] It gives no answer either way. It doesn’t say that the product is { within_the_limit }, and it doesn’t say that it is { over_the_limit }.
}

## What passed between the programme and the maker

# An answer, quoted whole.
told_reply = The maker answered on { $day }: “{ $said }”

# Something that the maker did, in the programme's words, which are no quotation.
told_action = On { $day } a step of the maker’s was noted: { $said }

# Nothing further is expected.
told_closed = Closed on { $day }: { $said }

## The story in days

# Heading of the days.
story_heading = From shop to sheet

# Before a day. "next": what has to happen yet.
story_what = { $what ->
    [bought] Bought
    [sent] Sent to the lab
    [tested] Tested
    [told] Maker told
    [answered] Maker answered
    [closed] Closed
    [issued] Issued
    [amended] Amended
   *[next] Next
}

# After "maker told".
story_told = { $asked ->
    [yes] { $day }; answer asked for by { $due }
   *[no] { $day }
}

# In the place of a day.
story_no_day = not on record

# After "maker told", where the maker is to be told.
story_no_notice = no notice on record

# After "maker answered", where a notice was sent.
story_no_answer = no statement on record

# After "issued", on a proof.
story_not_yet = not yet

# After "next", on a proof.
story_next_tell = The maker is to be told before this is published.

# Likewise.
story_next_answer = The maker’s answer is due on { $due }.

# Likewise: the maker has until then.
story_next_issue = This sheet may be published from { $day } on.

# After "next", where there is no verdict.
story_next_settle = What the registers leave open has to be settled first.

# Likewise. Up to four packages are named, more are counted.
story_next_conflict = { $by ->
    [count] The lab has to say which of its reports holds, for { $packages } packages.
   *[name] { $packages ->
        [one] The lab has to say which of its reports holds for package { $named }.
       *[other] The lab has to say which of its reports hold for packages { $named }.
    }
}

# Likewise.
story_next_lab = { $by ->
    [count] Results of { $packages } packages are still to come from the lab.
   *[name] { $packages ->
        [one] A result of package { $named } is still to come from the lab.
       *[other] Results of packages { $named } are still to come from the lab.
    }
}

# Likewise: nothing of it is on record yet.
story_next_repeat = { $by ->
    [count] It takes a repeat by the lab for { $packages } packages, or new packages; neither is on record yet.
   *[name] { $packages ->
        [one] It takes a repeat of package { $named } by the lab, or a new package; neither is on record yet.
       *[other] It takes repeats of packages { $named } by the lab, or new packages; neither is on record yet.
    }
}

# Likewise.
story_next_finer = { $by ->
    [count] { $packages } packages need a finer test, or new packages.
   *[name] { $packages ->
        [one] Package { $named } needs a finer test, or a new package.
       *[other] Packages { $named } need a finer test, or new packages.
    }
}

# Likewise.
story_next_buy = { $packages ->
    [one] One more package is to be bought.
   *[other] { $packages } more packages are to be bought.
}

# Likewise: for fermented and hydrolysed food.
story_next_unfit = No test of this kind can settle it; what the maker has on record of the ingredients may.

# Likewise: packages of a later round are on record.
story_next_round = Packages of round { $round } are on record.

## Pictures

# Under a strip of a hundred small packages: what was tested, and how many of the hundred it leaves open.
shares_strip = { $over } of { $packages }: up to { $most }

# Under a smaller strip beside it: so many packages, had none been over the limit.
shares_more = { $packages }: up to { $most }

# Under the strips.
shares_key = Hatched: as many of 100 packages as could still be { over_the_limit }, were ours a random pick. Below, in grey: what 6, 14 or 59 packages would show.

# Likewise, where some packages were over the limit.
shares_key_over = If ours were a random pick, of 100 packages at least the black ones are { over_the_limit }, and the hatched ones could be (95 % confidence).

# The strips for those who cannot see them; $strips are such as above.
shares_alt = Strips of 100 packages each. Hatched: how many could be { over_the_limit } though none of those tested was. { $strips }.

# Likewise.
shares_alt_over = { $least ->
    [0] A strip of 100 packages: at most { $most } could be { over_the_limit }.
    [one] A strip of 100 packages: at least 1 is { over_the_limit }, at most { $most } could be.
   *[other] A strip of 100 packages: at least { $least } are { over_the_limit }, at most { $most } could be.
}

# Heading of what the result means in a portion.
portion_heading = In a portion

# 1 ppm is 1 mg in a kilogram. No amount is called safe.
portion_said = { $kind ->
    [below] A portion of { $portion } of package { $package } (below { $figure }) holds less than { $own } of gluten. At the limit it would be { $limit }.
   *[measured] A portion of { $portion } of package { $package } ({ $figure }) holds { $own } of gluten. At the limit it would be { $limit }.
} We call no amount safe.

# Beside the squares of this food.
portion_own = { $kind ->
    [below] here less than { $own }
   *[measured] here { $own }
}

# Beside the squares at the limit.
portion_limit = at the limit { $limit }

# The squares for those who cannot see them.
portion_alt = { $kind ->
    [below] Gluten in a portion as squares of { $square }: here less than { $own }, at the limit { $limit }.
   *[measured] Gluten in a portion as squares of { $square }: here { $own }, at the limit { $limit }.
}

## How to check the sheet

# Heading.
check_heading = How to check this sheet

# A sum worked once; figures without their unit, since the heads of the table have it.
sum_mean = Package { $package }: { $readings }. Their mean is { $mean }{ $printed ->
    [rounded] , printed as { $result }
   *[same] { "" }
}. They are { $gap } apart; up to { $allowed } is allowed at that level.

# Likewise.
sum_disagree = Package { $package }: { $readings }. They are { $gap } apart; up to { $allowed } is allowed at that level, so they have no mean.

# Likewise.
sum_below = Package { $package }: { $readings }. No figure was measured, so there is no mean: the result is { $result }.

# Likewise: "<5" may be any value from 0 to 5.
sum_range = Package { $package }: { $readings }. “<” or “>” leaves a value open between bounds, so the mean is open too: { $result }.

# After the sum: the place of its first figure.
check_place = The first figure stands in { $file }, row { $row }, column { $column }.

# Before the address of the sheet's page, on issued sheets.
check_page = This sheet and its data on the web:

# The square for those who cannot see it.
check_square = QR code of { $address }

## Who answers for the sheet

# In the foot: who publishes it. ISO/IEC 17025:2017, 7.8.2.1 has a lab say so of its report; this sheet is not the lab's.
imprint = { $addressed ->
    [yes] { $directed ->
        [yes] Responsible: { $director }, { $programme }, { $address }.
       *[no] Responsible: { $programme }, { $address }.
    }
   *[no] { $directed ->
        [yes] Responsible: { $director }, { $programme } (no postal address on record).
       *[no] Responsible: { $programme } (no postal address on record).
    }
}

# Before it in the foot; the revision says what changed (7.8.8).
imprint_mistakes = Mistakes are corrected in a new revision.

## Files and revisions

# Under "where the numbers come from".
sources_nothing = The lab has reported nothing yet.

# Likewise, where the PDF carries something of every lab file.
sources_carried = { $carried ->
    [files] The lab’s files are attached to this PDF.
   *[cells] The cells used here are attached to this PDF.
}

# Likewise, where some are too large.
sources_some = { $files ->
    [one] One of these files is attached to this PDF.
   *[other] Attached to this PDF: { $files } of these files.
}

# After the certificates and photographs that are named; $file is attached to the PDF.
sources_more = { $exhibits ->
    [one] One more certificate or photograph by name and SHA-256 in { $file }.
   *[other] Further certificates and photographs by name and SHA-256 in { $file }: { $exhibits }.
}

# In the head of an issued sheet, after its number.
edition_line = revision { $revision } · { $day }

# In the head of a proof.
edition_proof = { $dated ->
    [yes] Proof of revision { $revision }, made { $day }, not for publication
   *[no] Proof of revision { $revision }, not for publication
}

# Under "revisions" (ISO/IEC 17025:2017, 7.8.8: a changed report names the one it replaces).
edition_replaces = It replaces revision { $revision } of { $day }.

# Beside the first revision.
edition_first = First issue.

# Beside a later one of which the register gives no reason.
edition_unexplained = No reason is on record.

# After the three latest.
edition_more = All revisions are in the programme’s archive.

## Where a product stands with its maker

# In lists: the maker need not be told.
maker_not_needed = Nothing to tell the maker

# Likewise.
maker_to_send = The maker has not been told yet

# Likewise.
maker_waiting = Waiting for a reply

# Likewise; no reproach, since none is owed.
maker_overdue = No reply by the due date

# Likewise.
maker_replied = { $late ->
    [yes] Reply came late
   *[no] The maker replied
}

# Likewise.
maker_closed = Closed on { $day }

# In the place of a long reply.
maker_long_text = The whole text is on the product’s sheet.

## Whether a sheet may be published

# The state, as one would say it; the screens say it in English.
state_with_lab = with the lab

# Likewise.
state_waiting = waiting for the lab

# Likewise.
state_held = held

# Likewise.
state_ready = ready

# Likewise.
state_published = published

# State and reason. $until is a date in figures.
publication_standing = { $dated ->
    [yes] { $state } until { $until }. { $why }
   *[no] { $state }. { $why }
}

# What the state rests on.
why_nothing_reported = The lab has reported nothing yet.

# Likewise.
why_not_reported = { $packages ->
    [one] The lab has not reported 1 package yet: { $codes }.
   *[other] The lab has not reported { $packages } packages yet: { $codes }.
}

# Likewise; files and lines.
why_register = The registers leave something open that bears on this sheet: { $places }. Mend that first.

# Likewise; files and cells.
why_reading = A reading of its own cannot be used as it stands: { $places }. Have it mended, or set it aside in corrections.csv.

# Likewise.
why_no_notice = The maker has not been told: no notice is on record.

# Likewise.
why_no_reply = The maker was told on { $told } and has not answered: the sheet may be published from { $until } on.

# Likewise.
why_nothing_to_tell = Nothing is to be told the maker first.

# Likewise.
why_answered = The maker answered on { $day }.

# Likewise.
why_time_is_over = The maker was told on { $told } and had until { $since } to answer.

# Likewise: a correction in the maker's favour, or for safety.
why_corrects = It corrects what was published, and that waits for nobody.

# Likewise.
why_issued = Revision { $revision } was issued on { $day } and says the same.

# After it, where an accusation was made or taken back.
why_letter_due = Revision { $revision } said otherwise: a letter of correction is due at once.

# Many codes or places.
some_and_more = { $some } and { $more } more

# On a sheet that was issued before its time, and in the register of what was issued: what it did not wait for. No full stop.
early_not_reported = { $packages ->
    [one] Issued before the lab had reported 1 package
   *[other] Issued before the lab had reported { $packages } packages
}

# Likewise.
early_no_notice = Issued before the maker was told

# Likewise.
early_no_reply = Issued before the maker’s time to answer was over on { $day }

# Likewise.
early_other = Issued before its time

# In summary and newsletter: what was issued reads otherwise now. What it said is not repeated.
under_revision = { $branded ->
    [yes] { $product } ({ $brand }), sheet { $number }: under revision. Revision { $revision } of { $day } is not to be relied on any more; a new one is not issued yet.
   *[no] { $product }, sheet { $number }: under revision. Revision { $revision } of { $day } is not to be relied on any more; a new one is not issued yet.
}

# What leads the next newsletter, and stands on the page of corrections. $said is one of what a sheet says against a product.
corrected = { $branded ->
    [yes] Correction: { $product } ({ $brand }), sheet { $number }. Revision { $revision } of { $day } said that { $said }.
   *[no] Correction: { $product }, sheet { $number }. Revision { $revision } of { $day } said that { $said }.
}

# After it.
corrected_now = { $issued ->
    [yes] Since { $day } the sheet says that { $says }.
   *[no] The next revision, which is not issued yet, says that { $says }.
}

# After it; $reason is the programme's own sentence, without its full stop.
corrected_why = Why: { $reason }.

# Taken in by these sentences, and by the letter of correction. "amount": a package is over the limit. "label": an ingredient is a
# source of gluten.
accused = { $amount ->
    [yes] { $label ->
        [yes] at least one package tested { over_the_limit }, and the list of ingredients names a source of gluten
       *[no] at least one package tested { over_the_limit }
    }
   *[no] { $label ->
        [yes] the list of ingredients names a source of gluten
       *[no] no package is known to be { over_the_limit }, and no ingredient is found to be against the rule
    }
}
