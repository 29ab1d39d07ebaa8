# The letters to a maker: notice, correction, mail.

## The frame of a letter

# At the head of each page of a notice; the number of the sheet follows.
letter_notice_head = Notice of results · sheet

# At the head of each page of a letter of correction; the number of the sheet follows.
letter_correction_head = Correction · sheet

# At the foot of each page; the programme's mail address follows.
letter_questions = Questions:

# The first line of the address.
letter_addressee = The quality manager

# How a letter on paper begins.
letter_dear = Dear quality manager,

# How letters and mails end; the name of who writes follows.
letter_yours = Yours faithfully,

## The notice

# The first line of a notice: the product, with what is in a package.
letter_title = Results for your { $name }{ $has_net ->
    [yes] , { $net }
   *[no] { "" }
}

# The title of a notice as a file.
letter_notice_document = { $title }. Notice to the maker, sheet { $sheet }

# What was bought. "some", "none": the lab has not reported on every package. "shops": the register names the shop of each.
letter_bought = { $reported ->
    [all] { $packages ->
        [one] We bought 1 package of this product { $place ->
            [shops] in a shop and
           *[unknown] and
        } had it tested for gluten.
       *[other] We bought { $packages } packages of this product { $place ->
            [shops] in shops and
           *[unknown] and
        } had them tested for gluten.
    }
    [some] { $packages ->
        [one] We bought 1 package of this product.
       *[other] We bought { $packages } packages of this product.
    } So far the laboratory has reported on { $tested } of them.
   *[none] { $packages ->
        [one] We bought 1 package of this product. The laboratory has not reported on it yet.
       *[other] We bought { $packages } packages of this product. The laboratory has not reported on them yet.
    }
}

# How many of the packages that the lab has reported on are over the limit. $first, $counted and $tested are
# numbers in words, $first as a sentence begins with it.
letter_found_over = { $rule ->
    [detection] { $share ->
        [one] In the one package gluten was detected.
        [both] In both packages gluten was detected.
        [all] In all { $tested } packages gluten was detected.
       *[some] Gluten was detected in { $counted } of { $tested } packages.
    }
   *[other] { $share ->
        [one] The one package
        [both] Both packages
        [all] All { $tested } packages
       *[some] { $first } of { $tested } packages
    } tested { side_over }.
}

# That every package is within the limit, in a letter about the label.
letter_found_within = { $rule ->
    [detection] { $packages ->
        [one] In the one package no gluten was detected (LOD { $limit }).
        [2] In neither of the two packages was gluten detected (LOD { $limit }).
       *[other] In none of the { $tested } packages was gluten detected (LOD { $limit }).
    }
   *[other] { $packages ->
        [one] The one package
        [2] Both packages
       *[other] All { $tested } packages
    } tested { $rule ->
        [passes] at or below
       *[fails] below
    } the limit of { $limit }.
}

# That the results give no verdict, in a letter about the label.
letter_found_nothing = The results give no verdict.

# That the letter asks about the label: besides a result over the limit, or for that alone.
letter_label_too = { $over ->
    [yes] We also have a question about the list of ingredients.
   *[no] Our question is about the list of ingredients.
}

# Why the letter comes now.
letter_before = We are writing before we publish, so that you can check the facts and answer.

# Heads of the table of packages.
letter_package = Package
letter_lot = Lot
letter_bought_on = Bought

# Head of a column of extractions; its number follows.
letter_extraction = Extr.

# Head of the column of results; a comma and the unit follow.
letter_result = Result

# In a letter on a result over the limit, where no package's extractions disagree. "no": those of a package are all beyond the
# same end of the assay's range, so that only the absence of a contradiction is known.
letter_agree = { $sure ->
    [yes] The extractions of each package agree, by the rule that the sheet states.
   *[no] Nothing shows that the extractions of any package differ, by the rule that the sheet states.
}

# The verdict in the words of the sheet.
letter_verdict = The verdict on the sheet will read “{ $verdict }”.

# A word of the list of ingredients and the grain that it is of.
letter_term = “{ $printed }”{ $grain ->
    [wheat] { " " }(wheat)
    [barley] { " " }(barley)
    [rye] { " " }(rye)
    [oats] { " " }(oats)
    [triticale] { " " }(triticale)
    [wheat_or_barley] { " " }(wheat or barley)
    [wheat_or_rye] { " " }(wheat or rye)
   *[unknown] { "" }
}

# What the list of ingredients names: a fact.
letter_label_names = The list of ingredients names { $terms }; the package says “{ $claim }”.

# What the rule says of ingredients, quoted and not applied. 21 CFR 101.91(a)(3)(i); CXS 118-1979, 2.1.1; B.24.018 of the Food
# and Drug Regulations; Resolución Conjunta 32/2023; Reglamento Sanitario de los Alimentos, articles 516 and 518; Food Standards
# Code, Standard 1.2.7 with Schedule 4.
letter_label_rule = { $law ->
    [us] The rule 21 CFR 101.91 asks that a food with this claim has no ingredient that is a gluten-containing grain, and none from such a grain that was not processed to remove gluten.
    [codex] Codex standard CXS 118 asks that a food with this claim has no ingredient of wheat, rye or barley, unless it was specially processed to remove gluten.
    [canada] B.24.018 of the Food and Drug Regulations asks that a food with this claim contains no gluten of barley, oats, rye, triticale or wheat from its ingredients.
    [argentina] Resolución Conjunta 32/2023 asks that a food with this claim is made without wheat, oats, barley and rye.
    [chile] The Reglamento Sanitario de los Alimentos asks that a food with this claim is made without grain that holds gluten.
    [au-nz] Standard 1.2.7 of the Food Standards Code asks that a food with this claim contains no oats, no malted grain that holds gluten, and no product of these.
   *[other] The programme’s rule asks about the ingredients of a food with this claim.
}

letter_ask_head = What we ask of you

# What is asked of every maker. The statement is of up to 100 words, as the sheet has room for.
letter_ask = Please tell us if a fact is wrong: the lot, the dates, the ingredients as we read them. If you wish, send a statement of up to 100 words. We print it unedited, on the sheet itself. You need not explain the result.

# Where the list of ingredients names a source of gluten.
letter_ask_ingredient = Have we read the list wrongly, or is the ingredient made so that it is not a gluten source? If so, please tell us how, and from which grain.

# Where the list names oats and nothing is on record of them.
letter_ask_oats = The list names oats: please tell us whether they are kept apart from other grain where they are grown, moved and milled, and how.

letter_offer_head = What you can have

# What goes along of the lab's files, as publishing.attach has it. "some": the lab has not reported on every package.
letter_offer_files = { $attach ->
    [whole] { $reported ->
        [all] The laboratory’s files are attached to the enclosed draft of the sheet.
       *[some] What the laboratory has sent so far is attached to the enclosed draft of the sheet.
    }
    [excerpt] What we used of the laboratory’s files is attached to the enclosed draft.
   *[none] Ask, and we send you what we used of the laboratory’s files, cell by cell.
}

# What is kept of the packages: $kept is the setting "retained", "the ground rest of each package, for six months".
letter_kept = We keep { $kept }.

# After what is kept.
letter_offer_kept = Ask, and we send a part of it to a laboratory that you choose.

# Where nothing is reported and nothing kept.
letter_offer_nothing = There is nothing to send you yet.

letter_next_head = What happens next

# The steps of what happens next, each below its day.
letter_step_letter = this letter
letter_step_reply = your reply is due
letter_step_publish = we publish

# The days of the steps in a letter without a date.
letter_today = today
letter_day = day { $day }

# What happens without an answer, by a day or within days.
letter_without_reply = { $dated ->
    [yes] If we have no reply by { $day }, the sheet will say that there is none, and no more about it.
   *[no] { $days ->
        [one] If we have no reply within 1 day, the sheet will say that there is none, and no more about it.
       *[other] If we have no reply within { $days } days, the sheet will say that there is none, and no more about it.
    }
} A later reply is added as a revision.

letter_says_not_head = What this letter does not say

# What a notice or a correction does not say: $over, $label are what it says against the product.
letter_says_not = { $over ->
    [yes] It does not say how any gluten got in, that other packages are like these, or that anyone was careless. It is not a legal finding: it says { $rule ->
        [detection] in which packages gluten was detected
        [passes] which packages tested above the limit
       *[fails] which packages tested at or above the limit
    }{ $label ->
        [yes] { " " }and what the list of ingredients names, no more.
       *[no] , no more.
    }
   *[no] { $label ->
        [yes] It does not say that the food holds gluten, that other packages are like these, or that anyone was careless. It is not a legal finding: it says what the list of ingredients names, no more.
       *[no] It does not say that other packages are like these. It is not a legal finding, and no seal: it says what these packages showed, no more.
    }
}

## Beside the notice

# Above the largest item beside the letter: a day, or a number of days.
letter_reply_by = Please reply by
letter_reply_within = Please reply within
letter_days = { $days ->
    [one] 1 day
   *[other] { $days } days
}

letter_publish_label = Planned day of issue
letter_publish_after = { $days ->
    [one] 1 day after this letter
   *[other] { $days } days after this letter
}
letter_sheet_label = Sheet
letter_sheet = { $sheet }, draft enclosed
letter_limit_label = Limit

# Taken in by the limit.
letter_law = { $law ->
    [us] 21 CFR 101.91
    [codex] Codex standard CXS 118
    [eu] Regulation (EU) No 828/2014
    [uk] Regulation (EU) No 828/2014 as kept in UK law
    [canada] Health Canada’s position on B.24.018 of the Food and Drug Regulations
    [argentina] Resolución Conjunta 32/2023
    [chile] article 518 of the Reglamento Sanitario de los Alimentos
    [au-nz] Food Standards Code, Standard 1.2.7
   *[custom] the programme’s own rule
}

# The limit that the claim on the package must keep.
letter_limit = { $rule ->
    [detection] No detectable gluten ({ letter_law }); the test detects from { $limit } on (LOD)
    [passes] No more than { $limit } ({ letter_law })
   *[fails] Less than { $limit } ({ letter_law })
}

letter_method_label = Method
letter_lab_label = Laboratory
letter_reply_label = Reply to
letter_enclosed_label = Enclosed

# What goes along, as publishing.attach has it.
letter_enclosed = { $attach ->
    [whole] Draft of sheet { $sheet }, with the laboratory’s files attached to it; a form for the reply
    [excerpt] Draft of sheet { $sheet }, with the laboratory’s cells attached to it; a form for the reply
   *[none] Draft of sheet { $sheet }; a form for the reply
}

## The form for the reply

# The title of the form.
letter_form_head = Your reply

# Before the number of the sheet.
letter_form_sheet = sheet

# Over what the maker can mend.
letter_form_facts_head = The facts on the draft

# A box.
letter_form_right = Product, lots, dates and ingredients are right as they stand there.

# A box, with lines to write on.
letter_form_wrong = This is wrong, and this is right:

# Over the statement.
letter_form_statement_head = Your statement

# A box.
letter_form_no_statement = We make no statement.

# A box, with lines to write on.
letter_form_statement = Please print this on the sheet as it stands (up to 100 words):

# Over the test that a maker may have made.
letter_form_rest_head = A test of your own

# A box, where something is kept.
letter_form_rest = Please send a part of what is kept of the packages to this laboratory:

# A line to fill in.
letter_form_name = Name

# Likewise.
letter_form_position = Position

# Likewise.
letter_form_day = Date

# Likewise.
letter_form_signature = Signature

## The letter of correction

letter_correction_title = Correction of what we published on your { $name }

# The title of the letter as a file.
letter_correction_document = { $title }. Sheet { $sheet }

# What the file is, for catalogues.
letter_correction_about = Letter of correction to the maker

letter_said_head = What we said
letter_says_head = What we say now
letter_why_head = Why
letter_does_head = What we do about it

# What the earlier revision said against the product; "no", "no": nothing.
letter_said = Revision { $revision } of our sheet { $sheet }, of { $day }, said that { $over ->
    [yes] { $rule ->
        [detection] gluten was detected in at least one package
        [passes] at least one package tested above the limit
       *[fails] at least one package tested at or above the limit
    }{ $label ->
        [yes] , and that the list of ingredients names a source of gluten.
       *[no] .
    }
   *[no] { $label ->
        [yes] the list of ingredients names a source of gluten.
       *[no] { $rule ->
            [detection] no gluten is known to have been detected in any package
            [passes] no package is known to be above the limit
           *[fails] no package is known to be at or above the limit
        }, and that no ingredient is found to be against the rule.
    }
}

# The same of what is said now.
letter_says = { $over ->
    [yes] { $rule ->
        [detection] Gluten was detected in at least one package
        [passes] At least one package tested above the limit
       *[fails] At least one package tested at or above the limit
    }{ $label ->
        [yes] , and the list of ingredients names a source of gluten.
       *[no] .
    }
   *[no] { $label ->
        [yes] The list of ingredients names a source of gluten.
       *[no] { $rule ->
            [detection] No gluten is known to have been detected in any package
            [passes] No package is known to be above the limit
           *[fails] No package is known to be at or above the limit
        }, and no ingredient is found to be against the rule.
    }
}

# The verdict of the new revision, issued or not yet.
letter_reads = { $issued ->
    [yes] The verdict on the sheet now reads “{ $verdict }”.
   *[no] The verdict on the sheet will read “{ $verdict }”.
}

# Where the register of what was issued gives no reason (yet).
letter_why = What we know now is not what we knew then. The revised sheet says what changed, and gives every figure with its source.

# What is done about the sheet.
letter_does = { $issued ->
    [yes] The revised sheet was issued on { $day }.
   *[no] We issue the revised sheet at once; nothing holds it up.
} It names the revision that it replaces. Our page of corrections and our next newsletter lead with this correction. The earlier sheet stays in our archive, so that anyone can see what was changed.

# Where the correction says something against the product for the first time.
letter_does_accuse = We do not wait, since readers rely on the earlier sheet. Please tell us if a fact is wrong, and send a statement of up to 100 words if you wish, within { $days ->
    [one] 1 day
   *[other] { $days } days
}: we print it unedited, as a further revision of the sheet.

# Where it takes something back.
letter_does_clear = If somebody has repeated what we said, tell us who, and we write to them. If what we said has cost you something, please tell us that, too.

# Beside the letter.
letter_corrected_label = Corrected
letter_corrected = Sheet { $sheet }, revision { $revision } of { $day }
letter_replaced_label = Replaced by
letter_replaced = { $issued ->
    [yes] Revision { $revision }, issued { $day }
   *[no] Revision { $revision }, draft enclosed
}

## The mails

# The subject of the mail to a maker.
mail_subject = { $about ->
    [both] Test results and the label of
    [label] The label of
   *[results] Test results for
} { $name }{ $has_brand ->
    [yes] { " " }({ $brand })
   *[no] { "" }
}, sheet { $sheet }{ $dated ->
    [yes] , please reply by { $day }
   *[no] { "" }
}

# The subject of a mail of correction.
mail_correction_subject = Correction of our sheet { $sheet } on { $name }

# How a mail to a maker begins.
mail_dear = { $has_maker ->
    [yes] Dear quality manager of { $maker },
   *[no] Dear quality manager,
}

# The first paragraph.
mail_who = We are { $programme }. We have foods that are labelled “{ $claim }” tested for gluten. This is about your product { $name }{ $has_brand ->
    [yes] { " " }({ $brand })
   *[no] { "" }
}, our sheet { $sheet }.

# A package over the limit, on a line of its own.
mail_package = Package { $package }{ $has_lot ->
    [yes] , lot { $lot }
   *[no] { "" }
}: { $result }

# After the packages: the rule is the programme's.
mail_enough = By the programme’s rule one such package is enough for the verdict that we publish.

# What the list of ingredients names, besides a result over the limit ("yes") or alone.
mail_label = { $also ->
    [yes] The list of ingredients also names
   *[no] The list of ingredients names
} { $terms }, which we read as a source of gluten in a food with this claim. Please tell us if we have read it wrongly.

# What is attached, and why we write.
mail_attached = The notice and our results sheet are attached. They show every figure, the lots, the dates, the method and the rule that we decide by. We write before we publish, so that you can check the facts and answer.

# By when, and what happens then. Without a day, in days from the message on.
mail_reply = { $dated ->
    [yes] Please reply by { $day }.
   *[no] { $days ->
        [one] Please reply within 1 day of this message.
       *[other] Please reply within { $days } days of this message.
    }
} Tell us if a fact is wrong, and send a statement if you wish: we print it unedited on the sheet. You need not explain the result.{ $dated ->
    [yes] { " " }We plan to publish on { $publish }.
   *[no] { "" }
} If no reply comes in time, the sheet says that there is none, and no more about it. A later reply is added to it.

# What the mail does not say.
mail_says_not = This message does not say how any gluten got in, that other packages are like these, or that anyone was careless. It is not a legal finding{ $has_regulator ->
    [yes] : whether a food may be sold as gluten-free is for the { $regulator } to decide.
   *[no] .
}

# The first paragraph of a mail of correction.
mail_correction_who = We are { $programme }. This is a correction of what we published on your product { $name }{ $has_brand ->
    [yes] { " " }({ $brand })
   *[no] { "" }
}, our sheet { $sheet }.

mail_correction_attached = The letter and the sheet are attached.

# Where the address would stand: "yes": the register has one that cannot be used. Plain letters without accents, which every
# mail program can show.
mail_no_maker = { $unusable ->
    [yes] Address of the maker goes here: the register has none that can be used
   *[no] Address of the maker goes here
}
