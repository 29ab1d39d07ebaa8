# What goes to a lab: the request form, the query and its mail.

## The query

# At the head of each page; the day follows, where it is known.
lab_query_head = Questions to the laboratory

# At the foot of each page; the programme's mail address follows.
lab_query_reply = Please reply to

# Below the lab's name in the address.
lab_sample_desk = Sample desk

# The first line.
lab_query_title = { $packages ->
    [one] Questions about 1 package
   *[other] Questions about { $packages } packages
}

# The title of the letter as a file.
lab_query_document = { $title }, { $lab }

# What the file is, for catalogues.
lab_query_about = Questions to the laboratory about results that do not fit together

# Why we write. "no": nothing of these packages is reported.
lab_query_opening = { $reported ->
    [yes] { $packages ->
        [one] Thank you for your reports. For 1 package we can’t decide yet, for the reason below.
       *[other] Thank you for your reports. For { $packages } packages we can’t decide yet, for the reasons below.
    }
   *[no] { $packages ->
        [one] Of 1 package that we sent you we have no report.
       *[other] Of { $packages } packages that we sent you we have no report.
    }
} Codes are those on the packages.

# Heads of the table of questions.
lab_package = Package
lab_report = Report
lab_found = What we found
lab_asked = What we ask

# What kind of question, before what was found; a full stop follows.
lab_kind = { $kind ->
    [conflict] Two results for one extraction
    [unreadable] No readable result
    [disagreement] Extractions disagree
    [set_aside] An extraction is set aside
    [missing_extraction] An extraction is missing
   *[missing_result] No result yet
}

# An extraction as the lab reported it, in a list: its figure, and the file, sheet and cell that it stands in. "no": the cell's
# words, which read as no figure.
lab_extraction = extraction { $number }: { $read ->
    [yes] { $figure }
   *[no] “{ $figure }”
} ({ $file }{ $has_sheet ->
    [yes] , sheet { $sheet }
   *[no] { "" }
}, { $cell })

# Two reports of one extraction differ.
lab_conflict = Your reports give different results for one extraction: { $extractions }.
lab_conflict_ask = Which of them stands? If the later one is a repeat, please number it as a further extraction.

# A cell that reads as no result.
lab_unreadable = We can’t read a result from your report: { $extractions }.
lab_unreadable_ask = Please send the figure with its unit, or “<” and the quantification limit.

# Extractions that are farther apart than repeats of one material may be (ISO 5725-6:1994, 5.2). "yes": one of them is a bound,
# so that the gap is a least one.
lab_disagree = The extractions differ by more than repeats of one material do: { $extractions }. They are { $least ->
    [yes] at least { $gap }
   *[no] { $gap }
} apart; { $allowed } is allowed.

# Where only the first pair is there. The numbers are those of the extractions to come.
lab_disagree_repeat = Please check the calculation and the dilution. If they are right, please extract the same ground sample twice more and report extractions { $first } and { $second }; the earlier ones stay in the record.

# Where repeats are there already.
lab_disagree_check = Please check the calculation and the dilution of each. The repeats are there already: we ask for no more.

# The programme set an extraction aside (corrections.csv), so that too few are left.
lab_set_aside = You reported { $extractions }. We have set aside what we could not use; { $usable ->
    [0] no extraction is left.
    [one] 1 extraction is left.
   *[other] { $usable } extractions are left.
}
lab_set_aside_ask = Please extract the same ground sample once more and report it as extraction { $number }, or tell us why that can’t be done.

# Fewer extractions than asked for.
lab_incomplete = { $usable ->
    [0] We have none of the { $asked } extractions that we asked for: { $extractions }.
   *[other] We have { $usable } of { $asked } extractions: { $extractions }.
}
lab_incomplete_ask = Please report the missing extraction, or tell us why there is none.

# Nothing is reported, and the time for it is over.
lab_missing = { $dated ->
    [yes] Sent on { $day }. We have no result.
   *[no] We have no result.
}
lab_missing_ask = Please tell us when we can expect it, or why there is none.

# How an answer is wanted.
lab_answer = Please answer by a corrected or further report, as a table file (CSV or XLSX), with a row for each extraction: our code, the number of the extraction, the result, its unit, the quantification limit.

# What an extraction is.
lab_answer_extraction = An extraction is a test portion of its own, taken through the whole procedure. Wells read from one extract are not extractions. Please change nothing in an earlier report without a new report number.

# By when an answer is wanted, and what it is to name. "no": the query has no date.
lab_answer_by = { $dated ->
    [yes] We would be glad of an answer by { $day }. Please quote { $number }.
   *[no] Please quote { $number } in your answer.
}

# How the query ends; the name of who writes follows.
lab_yours = Yours faithfully,

## The mail to a lab

# The subject; $packages are codes, with an ellipsis where there are more, $number is that of the query.
lab_mail_subject = Questions about your results: { $packages } ({ $number })

lab_mail_dear = { $has_lab ->
    [yes] Dear colleagues of { $lab },
   *[no] Dear colleagues,
}

# Why we write. "no": nothing of these packages is reported.
lab_mail_opening = { $reported ->
    [yes] { $questions ->
        [one] Thank you for your results. Before we can publish we have 1 question about them.
       *[other] Thank you for your results. Before we can publish we have { $questions } questions about them.
    }
   *[no] { $questions ->
        [one] We have 1 question about a package that we sent you.
       *[other] We have { $questions } questions about packages that we sent you.
    }
}

# One question, a paragraph each.
lab_mail_question = Package { $package }: { $asked }

lab_mail_answer = Please answer this message, or send a corrected or supplementary report. Please leave the package codes as they are, and number further extractions on from those that you have reported.

# How the mail ends; the name of who writes follows.
lab_mail_regards = With kind regards,

# Where the address would stand. Plain letters without accents, which every mail program can show.
lab_mail_no_address = Address of the lab goes here

## The request form

request_title = Samples for gluten testing

# The title of the form as a file.
request_document = { $has_round ->
    [yes] Samples for gluten testing, round { $round }
   *[no] Samples for gluten testing
}

# What the file is, for catalogues.
request_about = { $samples ->
    [one] 1 sample for { $lab }
   *[other] { $samples } samples for { $lab }
}

# At the head of each page.
request_head = Sample submission

# After it, where the form is of one round; the round's name follows.
request_head_round = · round

request_foot = Two copies: one stays with the samples, one goes back signed.

# Below the first line.
request_to = To { $lab }, sample desk. The laboratory works from codes: no brand, product or shop is named on this form.

# In an empty box.
request_sticker = For the laboratory: number or sticker

# Labels of the lines below it.
request_sent_by = Sent by
request_sent_on = Date sent
request_parcels = Parcels
request_reply_to = Reply to

request_samples = Samples

# Heads of the table of samples; the columns of crosses are narrow.
request_code = Code
request_kind = Kind of food
request_kind_unknown = not stated
request_content = Content
request_tannin = cocoa or tannin
request_legume = soy or legume
request_oats = oats
request_fermented = fermented, hydrolysed
request_condition = Condition on receipt

# Below the table.
request_crosses = Crosses tell the laboratory which extraction to use. They come from our register; please correct them where you know better.

request_asked = What is asked for

# Where a food is fermented or hydrolysed and the assay is a sandwich one (J AOAC 98:1346, 2015).
request_competitive = For samples marked fermented or hydrolysed, a competitive assay as well: a sandwich assay reads too low there.

request_grind = { $extractions ->
    [one] Grind each whole package; then 1 extraction of it, a test portion of its own. Wells of one extract are not extractions.
   *[other] Grind each whole package; then { $extractions } separate extractions of it, each a test portion of its own. Wells of one extract are not extractions.
}

request_report = Report every extraction as gluten in mg/kg, “<” and the quantification limit (at most { $lloq }) where it is below, and dilute what is above range.

request_table = Send the results in the table that comes with this form (.xlsx), a row for each extraction; a file of your own with the same columns will do as well (CSV or XLSX).

request_as_measured = Do not average, round or leave out an extraction, and give no statement of conformity.

# The rule of agreement (ISO 5725-6:1994, 5.2, factor of two extractions), with the programme's own repeatability.
request_pair_rule = Two extractions of a sample disagree where they differ by more than 2.8 s, s² = ({ $lloq }/10)² + ({ $share } of the mean)²: by more than { $allowed } at a mean of { $mean }. Then extract the same ground sample twice more and report numbers 3 and 4; leave no result out.

request_state = State your limit of detection and of quantification, the expanded uncertainty (k = 2) of a result near the limit, the condition of each sample on receipt, and every deviation from the method.

# $kept is the setting "retained", "the ground rest of each package, for six months".
request_keep = Please keep { $kept }.

request_custody = Who had the samples

# Heads and rows of the table of custody.
request_name = Name
request_signature = Signature
request_date = Date
request_time = Time
request_seals = Seals whole?
request_yes = yes
request_no = no
request_handed_over = Handed over
request_carried = Carried
request_received = Received

# Lines to write on, below it.
request_unusual = Condition on receipt, anything unusual
request_refused = Samples not accepted, and why

## The empty table that goes with the form

# The line above it.
form_title = { $has_round ->
    [yes] Results of gluten tests for { $programme }, round { $round }
   *[no] Results of gluten tests for { $programme }
}

# Below that.
form_hint = A row for each extraction, as measured, neither averaged nor rounded. Below quantification: the sign < and the limit.
