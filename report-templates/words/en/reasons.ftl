# Why a verdict is what it is: printed on the sheet, in results.json and products.csv, in `explain`, in the summary and in
# the letters. Each reason is a whole sentence.

## What the reasons are made of

# Taken in by other messages. "fails": exactly the limit is over it (21 CFR 101.91). "passes": exactly the limit is within it
# (Regulation (EU) No 828/2014, CXS 118-1979). "detection": the rule knows no limit (Food Standards Code 1.2.7); $limit is the
# assay's limit of detection.
side_over = { $rule ->
    [passes] above the limit of { $limit }
    [detection] a detection of gluten
   *[fails] at or above the limit of { $limit }
}

# Taken in likewise.
side_within = { $rule ->
    [passes] not above the limit of { $limit }
    [detection] no detection of gluten (LOD { $limit })
   *[fails] below the limit of { $limit }
}

# Taken in likewise: what a package's extractions give together.
held = { $kind ->
    [mean] { $figure } (mean)
    [below] less than { $upper }
    [range] { $figure } to { $upper }
    [above] more than { $figure }
    [detected] { $figure }
   *[nothing] no sound result
}

## Before anything else: what is not known

# The claim on the package is none that the rule knows, so that there is no limit to hold it against.
reason_unknown_claim = The package claims “{ $claim }”, which is no claim about gluten that this rule knows: there is no limit to hold it against. What does the package say?

# The register of products has no claim.
reason_no_claim = The register does not say what the package claims: there is no limit to hold it against.

# `processing` has a word that is none of none, fermented, hydrolysed.
reason_unknown_processing = The register’s word for how the food is processed cannot be read, and on that depends which assay can see its gluten.

# A register's heading is nearly the name of a column that is missing.
reason_heading = A register has a column “{ $found }” and none named “{ $meant }”: until that is settled, nothing is decided.

# A register has two columns of one name.
reason_heading_twice = A register has two columns “{ $heading }”: until one of them is gone, nothing is decided.

# A field that bears on the verdict cannot be read.
reason_field = “{ $written }” in the column “{ $column }” of a register cannot be read, and the verdict depends on it.

# A row of a register that bears on the verdict cannot be used.
reason_row = A row of a register that bears on this product cannot be used.

# A row of the register of reports cannot be used.
reason_report = What the register of reports says of { $file } cannot be used.

# A file in the folder of registers is nearly named as one.
reason_misnamed = A file is nearly named as the register of { $meant }, and was not read: until that is settled, nothing is decided.

# Likewise as the workbook in which registers are kept together.
reason_misnamed_workbook = A file is nearly named as the workbook of registers, and was not read: until that is settled, nothing is decided.

## Within

# Every package had less than the assay can put a number on, and that is within the limit.
reason_none_measured = { $packages ->
    [one] The one package held too little gluten to measure (below { $below }), which is { side_within }.
   *[other] Each of the { $packages } packages held too little gluten to measure (below { $below }), which is { side_within }.
}

# Every package is within the limit, and gluten was measured in at least one.
reason_all_within = { $packages ->
    [one] The result of the one package is { side_within }{ $guarded ->
        [yes] , the assay’s uncertainty included
       *[no] { "" }
    }.
   *[other] The result of each of the { $packages } packages is { side_within }{ $guarded ->
        [yes] , the assay’s uncertainty included
       *[no] { "" }
    }.
}

## Over

# One package is over the limit.
reason_over = { $kind ->
    [detected] In package { $package } gluten was detected: the lab gives { $figure }.
   *[other] Package { $package } measured { held }, which is { side_over }.
}

# Its extractions are too far apart to agree, and each of them is over by itself.
reason_each_over = The extractions of package { $package } disagree, and every one of them is { side_over }.

# Likewise, of three or more extractions the median is over (ISO 5725-6:1994, 5.2).
reason_median_over = The extractions of package { $package } disagree, and their median is { side_over }.

# A fermented or hydrolysed food: the sandwich assay, which sees too little there (J AOAC 98:1346, 2015), finds it over.
reason_over_by_sandwich = Package { $package } measured { held } by the sandwich assay, which is { side_over }; in such a food that assay reports too little rather than too much.

## Undecided packages

# No row of the lab's has a result of the package.
reason_missing = The lab has reported nothing of package { $package } yet.

# Fewer usable extractions than the programme asks for.
reason_too_few_extractions = Package { $package } has { $usable } of the { $asked } usable extractions that a result needs.

# Two reports of one extraction differ; neither is used until a correction settles it.
reason_conflict = The lab’s reports of package { $package } differ, and neither is used until it is settled which stands: { $usable } of the { $asked } extractions that a result needs are left.

# The extractions are farther apart than repeats of one material may be (ISO 5725-6:1994, 5.2).
reason_disagree = { $how ->
    [exact] The extractions of package { $package } disagree: they are { $gap } apart, where { $allowed } is allowed.
   *[least] The extractions of package { $package } disagree: they are at least { $gap } apart, where { $allowed } is allowed.
}

# Guarded decisions (ILAC-G8:09/2019): the expanded uncertainty reaches over the limit.
reason_too_close = Package { $package } measured { held }, too near the limit of { $limit } for the assay’s uncertainty.

# The bounds of the result lie on both sides.
reason_either_side = { $rule ->
    [detection] Package { $package } measured { held }, which does not show whether gluten was detected (LOD { $limit }).
   *[other] Package { $package } measured { held }, which does not show on which side of { $limit } it lies.
}

## Undecided products

# Fewer packages than the programme asks for.
reason_too_few_packages = { $tested ->
    [one] Only 1 of { $asked } packages has been tested.
   *[other] Only { $tested } of { $asked } packages have been tested.
}

# J AOAC 98:1346 (2015): a sandwich assay needs two binding sites on one molecule.
reason_sandwich_unfit = { $food ->
    [fermented] This food is fermented: a sandwich assay reports too little gluten in it, since proteins in pieces escape it. A competitive assay is needed.
   *[hydrolysed] This food is hydrolysed: a sandwich assay reports too little gluten in it, since proteins in pieces escape it. A competitive assay is needed.
}

# 85 FR 49240 (2020): the maker's records of what went in decide.
reason_records_decide = { $food ->
    [fermented] This food is fermented: no test shows reliably how much gluten it holds. In the United States the maker’s records of what went in decide.
   *[hydrolysed] This food is hydrolysed: no test shows reliably how much gluten it holds. In the United States the maker’s records of what went in decide.
}
