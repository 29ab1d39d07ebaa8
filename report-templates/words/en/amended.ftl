# What is not what it was: printed among the revisions of an amended sheet, in the digest, on the page of corrections and in
# the register of issues.

## One change

# What it is, what was printed, and what is printed now.
amended_change = { $what }: { $old } → { $new }

# What of the product it is.
amended_of_product = { $part ->
    [name] product name
    [verdict] verdict
    [label] label
    [claim] claim
    [brand] brand
    [net_content] net content
    [certifier] certifier
   *[barcode] barcode
}

# What of a package it is.
amended_of_package = { $part ->
    [result] package { $package }, result
    [extractions] package { $package }, extractions
    [lot] package { $package }, lot
    [best_by] package { $package }, best by
    [bought_on] package { $package }, bought on
   *[shop] package { $package }, shop
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

# Nothing that a reader would ask for.
amended_no_figure = No figure and no verdict changed

# No figure and no verdict; the parts are named.
amended_others = No figure and no verdict changed. Changed: { $others }

# Figures, verdict or label finding alone.
amended_figures = { $changes }

# Figures, verdict or label finding, and other parts.
amended_both = { $changes }. Also changed: { $others }
