# What is not what it was: printed among the revisions of an amended sheet, in the digest, on the page of corrections and in
# the register of issues.

## One change

# What it is, what is printed now, and what was.
amended_change = { $what }: now { $new }; before { $old }.

# What of the product it is.
amended_of_product = { $part ->
    [name] Product name
    [verdict] Verdict
    [label] Label
    [claim] Claim
    [brand] Brand
    [net_content] Net content
    [certifier] Certifier
   *[barcode] Barcode
}

# What of a package it is.
amended_of_package = { $part ->
    [result] Package { $package }, result
    [extractions] Package { $package }, extractions
    [lot] Package { $package }, lot
    [best_by] Package { $package }, best by
    [bought_on] Package { $package }, bought on
   *[shop] Package { $package }, shop
}

# A verdict, before or after.
amended_verdict = { $verdict ->
    [over_limit] over the limit
    [within_limit] within the limit
   *[no_verdict] no verdict
}

# What the label review found, before or after.
amended_finding = { $finding ->
    [none] nothing found
    [gluten_source] gluten source
    [unverified_oats] unverified oats
    [needs_review] needs review
   *[no_ingredients] no ingredients on record
}

# The same with the terms that it rests on.
amended_finding_terms = { amended_finding } ({ $terms })

# A result of which only the upper end is known.
amended_up_to = up to { $figure }

# Where there was, or is, nothing.
amended_no_value = none

# A package that the sheet did not have, or has no more.
amended_not_listed = not listed

# A reading that a correction takes out.
amended_set_aside = { $reported } (set aside)

## All of them

# A part of the sheet that reads otherwise. "wording": the same files give other words than were published.
amended_part = { $part ->
    [ingredients] the ingredients on record
    [correspondence] the correspondence with the maker
    [method] how we tested and decided
    [provenance] where the numbers come from
    [earlier] what earlier rounds found
    [programme] what the programme says of itself
   *[wording] the wording, by another version of the program
}

# Before the other changes, where none is of a figure, the verdict or the finding on the label.
amended_no_figure = No figure and no verdict changed.

# After them; $parts is a list of parts of the sheet.
amended_parts = These parts read otherwise: { $parts }.

# In their place, where no archive has the revision before.
amended_unknown = What revision { $revision } said is in no archive any more, so that it cannot be told here figure by figure what changed.
