# The plan of a round, the labels, the contact sheet and the diary.

## The plan

# The first line, and the title of the file.
plan_title = Plan of round { $round }

# What the file is, for catalogues.
plan_about = { $products ->
    [one] 1 product to test, what it costs and what it can show
   *[other] { $products } products to test, what they cost and what they can show
}

# At the head of each page; the round's name follows.
plan_head = Plan of round

plan_foot = For the programme alone. The codes must not reach the laboratory together with the products’ names.

# Below the first line, where nothing is to be bought.
plan_nothing = No product of the register is to be bought now; the lists below say why.

# Below the first line. The packages include the blinds.
plan_round = The round has { $products ->
    [one] 1 product,
   *[other] { $products } products,
} { $packages ->
    [one] 1 package
   *[other] { $packages } packages
}{ $blinds ->
    [0] { "" }
   *[other] , { $blinds } of them of known content,
} and { $extractions ->
    [one] 1 extraction.
   *[other] { $extractions } extractions.
}

# Where any price is known.
plan_costs = { $has_budget ->
    [yes] It costs { $total } of a budget of { $budget }.
   *[no] It costs { $total }.
}

# What has no price. Names in brackets are keys of programme.toml.
plan_unpriced = Not in any sum here: { $what }.
plan_unpriced_thing = { $thing ->
    [packages] the packages, since none has a price in the register yet
    [lab] the lab’s work (extraction_price)
   *[shipping] sending (shipping_price)
}

plan_products = What to test, and why

# Heads of the table of products.
plan_id = Id
plan_product = Product
plan_why_head = Why
plan_price_head = A package costs

# Why a product is worth testing; in a table, and on the screen after its name.
plan_why = { $why ->
    [new] Never tested
    [no_verdict] No verdict in round { $round }
    [answered] Over the limit in round { $round }, and the maker has answered
    [tested] Last tested { $day }
    [undated] Tested before, on a day that is not known
   *[asked_for] Asked for; it was over the limit
}{ $competitive ->
    [yes] ; needs a competitive assay
   *[no] { "" }
}

# What a package is expected to cost: the median of what was paid for the same kind of food, or for any; or the settings' figure.
plan_price = { $median } ({ $of ->
    [settings] programme.toml
    [everything] all foods, { $paid } paid{ $range ->
        [yes] , { $lowest } to { $highest }
       *[no] { "" }
    }
   *[category] { $paid } paid{ $range ->
        [yes] , { $lowest } to { $highest }
       *[no] { "" }
    }
})

plan_later = Next in line, beyond the budget
plan_write = Write, do not test
plan_write_lead = Whatever a test found, these labels already name what the rule forbids with this claim: write to the maker.
plan_label_names = The label names { $terms }.
plan_quoted = “{ $printed }”
plan_not_now = Not now

# Why a product is not to be bought now.
plan_why_not = { $why ->
    [under_way] Packages of round { $round } are bought or with the lab.
    [not_answered] It was over the limit in round { $round }, and no answer of the maker is registered.
    [no_assay] It is fermented or hydrolysed: under this rule no test decides for it. Ask the maker for the records of what went in.
    [processing] The register has a word for its processing that is none of the known ones: mend it first.
    [claim] Its claim in the register is none that the rule knows, so there is no limit to hold a result against.
    [open] The register leaves something open without which there would be no verdict: `galleyproof check` says what.
   *[in_round] It has packages in this round already.
}

plan_costs_head = What it costs, and what more would bring

# Heads of the comparison: packages of a product, extractions of a package.
plan_each_product = The round, with for each product
plan_design = { $packages ->
    [one] 1 package
   *[other] { $packages } packages
} × { $extractions ->
    [one] 1 extraction
   *[other] { $extractions } extractions
}

# Rows of the comparison.
plan_row_packages = Packages
plan_row_lab = Lab
plan_row_shipping = Sending
plan_row_total = All that is known
plan_row_budget = Products that the budget carries
plan_of = { $part } of { $whole }
plan_row_tenth = Finds one over, where 10 % of all packages are
plan_row_double = Says “over” at twice the limit
plan_row_half = Says “within” at half the limit
plan_row_error = Standard error of a product’s mean

# Where the next money is best spent. "package_scatter": since packages scatter more than extractions.
plan_next = { $best ->
    [package] The next money is best spent on a further package.
    [package_scatter] The next money is best spent on a further package: the packages of a product differ more than the extractions of a package.
   *[extraction] The next money is best spent on a further extraction of each package.
}
plan_next_package = The standard error of a product’s mean is { $now } now; a further package of each product lowers it to { $share }{ $priced ->
    [yes] { " " }for { $cost } a product.
   *[no] .
}
plan_next_extraction = A further extraction of each package lowers it to { $share }{ $priced ->
    [yes] { " " }for { $cost } a product.
   *[no] .
}
plan_next_basis = { $priced ->
    [yes] The comparison is for the same money.
   *[no] The comparison is of the steps themselves, prices not counted.
}

## Its charts

# The first chart: head, axes, and what it shows for who cannot see it.
plan_finding = The chance of finding at least one package over, if this share of all packages is
plan_finding_up = chance of finding one
plan_finding_along = share of all packages that is over the limit
plan_finding_alt = Curves of the chance that packages drawn at random hold at least one over the limit, against the share of all packages that is. With { $packages ->
    [one] 1 package
   *[other] { $packages } packages
}: { $tenth } where 10 % are over, { $fifth } where 20 % are, { $half } where half are.

# The second chart.
plan_verdicts = The chance of each verdict, if this is the product’s true mean
plan_verdicts_up = chance of the verdict
plan_verdicts_along = true mean of the product, { $unit }
plan_chart_limit = { $rule ->
    [detection] LOD { $limit }
   *[other] limit { $limit }
}
plan_over = { $rule ->
    [detection] positive for gluten
    [passes] above the limit
   *[fails] at or above the limit
}
plan_within = { $rule ->
    [detection] negative for gluten
    [passes] at or below the limit
   *[fails] below the limit
}
plan_undecided = no verdict
plan_verdicts_alt = Curves of the chance of each verdict against the true mean of a product, with the limit of { $limit } in the middle. At half the limit the verdict is within it in { $within } of all cases; at twice the limit it is over it in { $over }; without a verdict { $undecided_half } and { $undecided_double }.

## Other designs, and what statements need

plan_designs = Other designs
plan_designs_packages = Packages of a product
plan_grid_over = { $rule ->
    [detection] Found positive for gluten, true mean { $mean }
    [passes] Found above the limit, true mean { $mean }
   *[fails] Found at or above the limit, true mean { $mean }
}
plan_grid_within = { $rule ->
    [detection] Found negative for gluten, true mean { $mean }
    [passes] Found at or below the limit, true mean { $mean }
   *[fails] Found below the limit, true mean { $mean }
}
plan_extractions = { $extractions ->
    [one] 1 extraction
   *[other] { $extractions } extractions
}

plan_statements = Packages that a statement needs
plan_statements_lead = So many packages, drawn at random and none of them over, carry the statement at 95 % confidence.
plan_statement_head = Statement about one product
plan_statement_packages = Packages
plan_statement_cost = Cost
plan_statement = Fewer than { $share } of all packages are over

## What the figures rest on

plan_assumptions = What these figures rest on

# "no": a stand-in, until the programme has results enough of its own: the collaborative study of OMA 2018.15.
plan_between = { $own ->
    [yes] Relative standard deviation between the packages of a product: { $share }, from the programme’s own results ({ $df ->
        [one] 1 degree
       *[other] { $df } degrees
    } of freedom).
   *[no] Relative standard deviation between the packages of a product: { $share }, a stand-in (naturally contaminated oat flour in a collaborative study of 19 laboratories, 41 to 43 %), since the programme has too few figures of its own.
}
plan_scatter_within = { $own ->
    [yes] Relative standard deviation between the extractions of a package: { $share }, from the programme’s own results ({ $df ->
        [one] 1 degree
       *[other] { $df } degrees
    } of freedom).
   *[no] Relative standard deviation between the extractions of a package: { $share }, a stand-in (relative_repeatability in programme.toml), since the programme has too few figures of its own.
}

plan_model = Packages scatter about a product’s true mean, and extractions about their package’s content, lognormally and independently. The pair rule, the quantification limit of { $lloq } and the limit of { $limit } are applied as they stand; a claim with a limit of its own is not drawn.
plan_random = The packages are taken for a random pick of all packages. Packages from one shelf or one lot speak for less.
plan_bias = A lab’s own bias is not in these figures: no number of packages or extractions shows it.
plan_average = A plan says what a round can show of many products on average, and nothing of any product. What a food may be called is for the regulator to decide.

plan_blinds_head = Packages of known content

# What blinds are and how they are used. File names are those of the program.
plan_blinds = { $blinds ->
    [one] One package of known content goes along under a code like the others: known to hold no gluten, or with a known amount added.
   *[other] The round has { $blinds } packages of known content, which go along under codes like the others: one kind known to hold no gluten, the other with a known amount added.
} Their key is in blinds.csv: keep it where the lab cannot see it. Once the key is in registers/blinds.csv (plan --blinds --enter puts it there), their codes stand on the form, too, and what the lab finds in them is held against the key and told to you alone: no sheet, no count and no verdict has them.

## The buying list

plan_buying = Buying list
plan_buying_lead = One line a package. Stick its label on at once, photograph front, ingredients, claim and lot, and keep the receipt. Leave the packages closed.

# Below a product's name, where more than one package is bought.
plan_lots = Of different lots and shops, where they can be had; note it where not.

# "yes": more than those that are named.
plan_lots_before = { $more ->
    [yes] Tested before among others: { $lots }.
   *[no] Tested before: { $lots }.
}

# Heads of the list.
plan_code = Code
plan_shop = Shop
plan_lot = Lot
plan_best_by = Best by
plan_bought_on = Bought on
plan_paid = Price
plan_photographs = Photos

## The labels

labels_title = Labels for packages, round { $round }

# What the file is, for catalogues.
labels_about = { $labels ->
    [one] 1 label
   *[other] { $labels } labels
}

# On each label, after the programme's short name.
labels_keep_closed = keep closed

# For who cannot see it.
labels_square = QR code of { $code }

# In place of labels.
labels_none = No package is planned.

## The contact sheet

contact_title = Packages and their photographs

# What the file is, for catalogues.
contact_about = { $packages ->
    [one] 1 package
   *[other] { $packages } packages
}

contact_foot = Private: for the programme’s own record.

# Before the number of a page, and before the number of all pages.
contact_page = Page
contact_page_of = of

# What is told of a package, before a colon.
contact_label = { $of ->
    [lot] Lot
    [best_by] Best by
    [bought_on] Bought on
    [shop] Shop
   *[custody] Custody
}
contact_unknown = not recorded

# For who cannot see it.
contact_photograph = Photograph of package { $package }: { $name }

# A file that is not drawn.
contact_not_drawn = { $why ->
    [unread] { $path }: cannot be read
    [broken] { $path }: is damaged and is not drawn
    [kind] { $path }: is not a JPEG or PNG by its content and is not drawn
    [large] { $path }: is larger than 64 MB and is not drawn
   *[pixels] { $path }: has more than 100 million pixels and is not drawn
}
contact_none = No photograph is listed.

## The diary

# Entries of diary.ics, each with what it rests on.
diary_reply = Reply due: { $name } ({ $id })
diary_told = The maker was told on { $day }.
diary_publish = May be published: { $name } ({ $id })
diary_report = Lab report due: packages sent on { $day }
diary_not_reported = Not reported: { $codes }.
diary_retest = Test again: { $name } ({ $id })
diary_last = Last tested on { $day }.
