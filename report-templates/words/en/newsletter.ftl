# The newsletter, on paper, on a screen and as text.

## What is new

# The newsletter's name at the head of its paper.
newsletter_name = { $short_name } Digest

# The title in the PDF's data.
newsletter_title = { $programme } digest. { $headline }

# What it is, in the PDF's data.
newsletter_of = Newsletter of { $programme }.

# Words for the catalogue in the PDF's data, divided by semicolons.
newsletter_keywords = gluten; test results; newsletter

# The subject of the newsletter as a mail; a proof says that it is one.
newsletter_subject = { $proof ->
    [yes] Proof, not for publication: { $programme } digest. { $headline }
   *[no] { $programme } digest. { $headline }
}

# In place of the readers' addresses in that mail. ASCII, since some mail programs cannot read it otherwise.
newsletter_no_readers = Addresses of the readers go here

# The first line of the plain text.
newsletter_first_line = { $programme }: digest

# Taken in by the headline: how many of the new products are within the limit, over it, without a verdict.
newsletter_part = { $verdict ->
    [within] { $rule ->
        [passes] { $number } at or below the limit
        [detection] { $number } negative for gluten
       *[fails] { $number } below the limit
    }
    [over] { $rule ->
        [passes] { $number } above the limit
        [detection] { $number } positive for gluten
       *[fails] { $number } at or above the limit
    }
   *[none] { $number } without a verdict
}

# The headline: what is new. $parts is a list of the parts before.
newsletter_new = { $n ->
    [one] One product is new: { $parts }.
   *[other] { $number } products are new: { $parts }.
}

# The headline where nothing is new: since the last issue, or at all.
newsletter_nothing = { $results ->
    [yes] Nothing is new since the last issue.
   *[no] Nothing is new: no product has a result yet.
}

# After the headline: revisions of published sheets, which are no new products.
newsletter_amended_count = { $n ->
    [one] One sheet is amended.
   *[other] { $number } sheets are amended.
}

## How it was done

# How the programme tests: settings.
newsletter_how = { $packages ->
    [one] We buy one package of each product and have it tested { $times ->
        [one] once
        [2] twice
       *[other] { $spelt_times } times
    }.
   *[other] We buy { $spelt_packages } packages of each product and have each package tested { $times ->
        [one] once
        [2] twice
       *[other] { $spelt_times } times
    }.
}

# The limit. "mixed": some product's claim has another limit. "detection": Food Standards Code 1.2.7.
newsletter_limit = { $rule ->
    [detection] The rule asks for no detectable gluten; the test detects from { $limit } on.
   *[fails] { $mixed ->
        [yes] The limit goes with the claim; for gluten-free it is { $limit }.
       *[no] The limit for the claim is { $limit }.
    }
}

# What too little to measure means; the amount is known where all assays measure from the same on.
newsletter_measured = { $known ->
    [yes] Too little to measure means below { $amount }. It does not mean zero.
   *[no] Too little to measure does not mean zero.
}

# What so few packages can say: the one-sided exact bound for 0 of n, 1 less the n-th root of 0.05.
newsletter_snapshot = { $packages ->
    [one] These are snapshots of the packages that we bought. Even where our one package is { $rule ->
        [passes] at or below the limit
        [detection] negative for gluten
       *[fails] below the limit
    }, up to { $share } of all packages of a product might not be (95 % confidence, if ours was a random pick).
   *[other] These are snapshots of the packages that we bought. With 0 of { $packages } packages { $rule ->
        [passes] above the limit
        [detection] positive for gluten
       *[fails] at or above the limit
    }, up to { $share } of all packages of a product could still be (95 % confidence, if ours were a random pick).
}

## Charts and lists

# What the marks of the chart mean.
newsletter_marks = { $rule ->
    [passes] Filled mark: package above the limit. Open mark: at or below the limit. { $known ->
        [yes] Arrow: below { $amount }, or below the figure at its tip; to the right: above it. Dashed, or in words: undecided.
       *[no] Arrow: too little to measure, or below the figure at its tip; to the right: above it. Dashed, or in words: undecided.
    }
    [detection] Filled mark: package positive for gluten. Open mark: negative for gluten. { $known ->
        [yes] Arrow: below { $amount }, or below the figure at its tip; to the right: above it. Dashed, or in words: undecided.
       *[no] Arrow: too little to measure, or below the figure at its tip; to the right: above it. Dashed, or in words: undecided.
    }
   *[fails] Filled mark: package at or above the limit. Open mark: below the limit. { $known ->
        [yes] Arrow: below { $amount }, or below the figure at its tip; to the right: above it. Dashed, or in words: undecided.
       *[no] Arrow: too little to measure, or below the figure at its tip; to the right: above it. Dashed, or in words: undecided.
    }
}

# After it, where the list does not name every new product.
newsletter_listed = { $rule ->
    [passes] The list names the products above the limit, those without a verdict and those whose label names a gluten source; the register in the programme summary has all.
    [detection] The list names the products positive for gluten, those without a verdict and those whose label names a gluten source; the register in the programme summary has all.
   *[fails] The list names the products at or above the limit, those without a verdict and those whose label names a gluten source; the register in the programme summary has all.
}

# After that, in a mail that cannot list all of these.
newsletter_first_of = This list ends after the first { $n } of these; the printed newsletter has all.

# In a mail, before the key to the inks of the figures.
newsletter_each_package = A figure for each package:

# A meaning of the key, printed in the ink that it explains.
newsletter_figure = { $state ->
    [over] { $rule ->
        [passes] above the limit
        [detection] gluten detected
       *[fails] at or above the limit
    }
    [within] { $rule ->
        [passes] at or below the limit
        [detection] no gluten detected
       *[fails] below the limit
    }
   *[none] undecided
}

# In a mail, below a bar: how many are in a band. $of has the band's words, as the chart has them.
newsletter_bar = { $band ->
    [undecided] { $n } undecided
   *[other] { $n } { $of }
}

# Below a product in a list: a later round of the same food.
newsletter_again = Tested again in round { $round }: { $verdict ->
    [over] { $rule ->
        [passes] above { $limit }
        [detection] gluten detected
       *[fails] at or above { $limit }
    }
    [within] { $rule ->
        [passes] at or below { $limit }
        [detection] no gluten detected
       *[fails] below { $limit }
    }
   *[none] no verdict
} (sheet { $number }).

# What the greys of the bars mean. $measured is the middle band, as the chart has it: "5 to below 20 ppm".
newsletter_bands = White: { $known ->
    [yes] below { $amount }
   *[no] too little to measure
}. Grey: { $measured }. Black: { $mixed ->
    [yes] over the limit of its claim
   *[no] { $rule ->
        [passes] above { $limit }
        [detection] gluten detected
       *[fails] at or above { $limit }
    }
}. Dashed: undecided.

# The number of a sheet on a line of its own.
newsletter_sheet = Sheet { $number }

# The same in brackets, or below a product's name.
newsletter_sheet_within = sheet { $number }

# The verdict in a list, with the limit.
list_verdict_of = { $verdict ->
    [over] { $rule ->
        [passes] Above { $limit }
        [detection] Gluten detected
       *[fails] At or above { $limit }
    }
    [within] { $rule ->
        [passes] At or below { $limit }
        [detection] No gluten detected (LOD { $limit })
       *[fails] Below { $limit }
    }
   *[none] No verdict
}

# What parts results that stand in a row: no comma where figures have one.
list_between = { ", " }

# In place of the result of a package whose extractions disagree.
list_disagree = disagree

# A product's name, where it is not its first round.
list_round = { $product } (round { $round })

## Makers, labels, amended sheets, totals

# What a maker says, as it was written, and when.
newsletter_reply = “{ $statement }” ({ $day })

# Whose makers, who were told, have said nothing so far; of more than a few it is only counted.
newsletter_silent = { $named ->
    [yes] { $n ->
        [one] No statement from the maker of { $products } is on record. We print each one that comes.
       *[other] No statement from the makers of { $products } is on record. We print each one that comes.
    }
   *[no] No statement from the makers of { $number } products is on record. We print each one that comes.
}

# Whose makers are still to be told.
newsletter_to_tell = { $named ->
    [yes] { $n ->
        [one] The maker of { $products } has still to be told.
       *[other] The makers of { $products } have still to be told.
    }
   *[no] The makers of { $number } products have still to be told.
}

# What labels say, their words and products in lines below. Regulation (EU) No 828/2014 forbids no ingredient: "not_forbidden".
newsletter_labels = { $n ->
    [one] { $finding ->
        [gluten_source] One label names a gluten source, which the rule does not allow:
        [not_forbidden] One label names a gluten source, which the rule for this claim does not forbid:
        [unverified_oats] One label names oats, with no word on how they are kept apart:
       *[needs_review] One label names a term of unclear source:
    }
   *[other] { $finding ->
        [gluten_source] { $number } labels name a gluten source, which the rule does not allow:
        [not_forbidden] { $number } labels name a gluten source, which the rule for this claim does not forbid:
        [unverified_oats] { $number } labels name oats, with no word on how they are kept apart:
       *[needs_review] { $number } labels name a term of unclear source:
    }
}

# A product that has a word on its label, with its brand.
newsletter_label_product = { $brand }, { $product }

# A word of labels, in quotes, with the products that have it; of many only how many.
newsletter_label_word = { $named ->
    [yes] { $word }: { $products }
   *[no] { $word }: { $n } products
}

# The last of these lines, where there are more words than a list can hold.
newsletter_label_words_more = The register in the programme summary has the other words.

# After these.
newsletter_labels_ask = Such words are a reason to ask, not a test result.

# Where no label says anything.
newsletter_labels_none = No ingredient statement that we could read names a gluten source.

# A published sheet that was replaced; what was changed and why follows as it was written down.
newsletter_amended = { $product }, sheet { $number }: revision { $revision } replaces revision { $replaced } of { $day }.

# Taken in by the sentence on the programme so far.
newsletter_totals_of = { $rule ->
    [passes] { $within } at or below the limit, { $over } above the limit, { $none } without a verdict
    [detection] { $within } negative for gluten, { $over } positive for gluten, { $none } without a verdict
   *[fails] { $within } below the limit, { $over } at or above the limit, { $none } without a verdict
}

# The programme so far. "again": a food was tested in more than one round, and counts again.
newsletter_totals = { $products ->
    [0] So far no product has a result.
    [one] So far 1 product: { newsletter_totals_of }.
   *[other] { $again ->
        [yes] So far { $products } results of { $foods } foods: { newsletter_totals_of }.
       *[no] So far { $products } products: { newsletter_totals_of }.
    }
}

# Its packages.
newsletter_packages_so_far = { $packages ->
    [one] One package in all; with too little gluten to measure: { $unmeasured }.
   *[other] Counted are { $packages } packages in all, { $unmeasured } of them with too little gluten to measure.
}

# What is not counted, since the lab has reported nothing of it.
newsletter_with_lab = { $n ->
    [one] One more product is with the lab and counted nowhere here.
   *[other] { $number } more products are with the lab and counted nowhere here.
}

## Headings and fixed words

# Heading: corrections of what was published.
newsletter_corrections = Corrections

# Heading of the plain text's list; the unit follows in brackets.
newsletter_new_results = New results

# Heading.
newsletter_makers = What the makers say

# Heading.
newsletter_on_labels = On the labels

# Heading.
newsletter_amended_sheets = Amended sheets

# Heading.
newsletter_so_far = The programme so far

# Before the caution.
newsletter_note = Please note.

# The address follows.
newsletter_mistake = Found a mistake?

# Head of a column.
newsletter_head_sheet = Sheet

# Head of a column.
newsletter_head_product = Product

# Head of a column.
newsletter_head_brand_and_product = Brand and product

# Head of a column; the unit follows after a comma. In plain text a colon and the results follow.
newsletter_head_packages = Packages

# Head of a column; the unit follows after a comma.
newsletter_head_results = Package results

# Head of a column.
newsletter_head_verdict = Verdict

# Head of a column: what the label says.
newsletter_head_label = Label

# Head of a column: the verdict, and below it what the label says.
newsletter_head_verdict_and_label = Verdict and label

# What stands on every page that is not for publication.
newsletter_proof = Proof, not for publication
