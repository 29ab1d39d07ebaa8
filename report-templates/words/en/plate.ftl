# Plates: the wells that a lab has read, and the page of one.

## What was found of them

# What is not understood. What it is worth stands at its end: the plate as a whole is not read, or the sample in the well.
found_plate_fault = { $fault ->
    [absorbance] The absorbance of well { $well } is “{ $written }”, which is no figure.
    [content] What is in well { $well } is not understood: “{ $written }”.
    [concentration] The standard in well { $well } has no concentration that can be read: “{ $written }”.
    [stated] What the control in well { $well } should hold is not understood: “{ $written }”.
    [dilution] The dilution of well { $well } is not understood: “{ $written }”.
    [extraction] The number of the extraction in well { $well } is not understood: “{ $written }”.
    [twice] Well { $well } stands twice on the plate.
    [well] “{ $written }” is no well of a plate: these are A1 to H12.
    [unit] What is in well { $well }, “{ $written }”, is in { $other }, and the settings have standards in another unit.
    [columns] Two columns, “{ $written }” and “{ $other }”, say the same thing of each well.
    [no_contents] There is a grid of absorbances, and no second one that says what is in each well.
    [grids] Grids of a plate do not go together: for each one of absorbances, one of the same shape is needed that says what is in each well.
    [numbers] The standards are 1, 2, 3 and so on, from well { $well } on: these can be their numbers as well as their concentrations.
    [no_standards] The plate has no standards.
    [unnumbered] It is not said which extraction of package “{ $written }” is in well { $well }; its wells are read together, and held against nothing.
    [code] “{ $written }” in well { $well } is no registered package; “{ $other }” is like it.
   *[many] The file has { $written } plates; { $other } are the most that are read.
}{ $lost ->
    [plate] { " " }The plate is not read.
    [sample] { " " }This sample is not read.
   *[nothing] { "" }
}

# What to do about it.
do_plate_fault = { $fault ->
    [absorbance] Ask the lab for the figure of the plate reader.
    [content] Ask the lab for the package code, the extraction and the dilution, such as “FH-114-A E1 1:10”.
    [concentration] Ask the lab for the concentration of each standard, such as “Std 20 ppm”, or a column of concentrations.
    [stated] Ask the lab for the value or the range of the control, such as “18-26”.
    [dilution] Ask the lab for the dilution, such as “1:10”.
    [extraction] Ask the lab for the number of the extraction: 1 or 2.
    [twice] Ask the lab for a column that names the plate, where the table holds several.
    [well] Ask the lab which well it is.
    [unit] Set standards in [plate] of programme.toml to the unit that the lab uses.
    [columns] Leave the one column in the file that the curve is fitted to.
    [no_contents] Ask the lab for the layout of the plate: the same grid, with what is in each well.
    [grids] Ask the lab for one grid of absorbances and one of contents for each plate.
    [numbers] Ask the lab for concentrations with their unit, such as “Std 20 ppm”.
    [no_standards] Ask the lab for the wells of its standards.
    [unnumbered] Ask the lab for the number of the extraction: 1 or 2.
    [code] Ask the lab which package it is.
   *[many] Put the plates into several files.
}

# The curve needs more standards; two of them must be above zero.
found_plate_standards = Plate { $plate } has { $standards ->
    [one] 1 standard
   *[other] { $standards } standards
}; the curve { $curve } needs { $needed } of different concentrations, two of them above zero.

# Nothing can be read on it.
found_plate_no_curve = { $why ->
    [monotone] The curve { $curve } of plate { $plate } does not only rise or only fall from standard to standard: nothing can be read on it.
    [weights] A standard of plate { $plate } has a mean absorbance that is not above zero: it has no weight of 1/y^2, and the curve { $curve } cannot be fitted.
   *[fitted] No curve { $curve } can be fitted to the standards of plate { $plate }.
}

# What to do about either.
do_plate_curve = Ask the lab which curve it used, and set curve in [plate] of programme.toml; or ask whether the plate was a good one.

# A check of a plate, each named by its word in the data.
found_plate_monotone = Plate { $plate }, check monotone: { $steps ->
    [one] 1 standard does not go the way of the others.
   *[other] { $steps } standards do not go the way of the others.
}

found_plate_blank = Plate { $plate }, check blank: the mean absorbance of { $wells } is { $found }, and { $allowed } is the most.

found_plate_top = Plate { $plate }, check top: the mean absorbance of { $wells } is { $found }, and { $allowed } is the least.

found_plate_wells = Plate { $plate }, check well_cv: the wells { $wells } have a relative standard deviation of { $found } %, and { $allowed } % is the most.

found_plate_standard = Plate { $plate }, check back_calculated: { $read ->
    [yes] the standard of { $standard }, read back on its own curve, differs by { $found } %, and { $allowed } % is the most.
   *[no] the standard of { $standard } cannot be read back on its own curve.
}

found_plate_control = Plate { $plate }, check recovery: { $read ->
    [yes] the control “{ $control }” comes to { $stated ->
        [value] { $found } % of its value, and { $low } to { $high } % is allowed.
       *[range] { $found } { $amount }, and { $low } to { $high } { $amount } is allowed.
    }
   *[no] the control “{ $control }” lies outside the standards, and no figure can be read of it.
}

# What to do about any of these.
do_plate_quality = Ask the lab whether the plate was accepted, and on what grounds. What it reported stands.

found_plate_differs = The absorbances of package “{ $package }”, extraction { $extraction }, come to { $is ->
    [below] less than { $recomputed } { $amount }
    [above] more than { $recomputed } { $amount }
   *[figure] { $recomputed } { $amount }
}; reported is “{ $reported }” in { $reported_at }.

# What to do about it.
do_plate_differs = Ask the lab how the figure was worked out: by which curve, and with which dilution. What it reported stands.

## The page of a plate

# The first line, and the title of the file.
plate_title = Plate { $plate }

plate_about = A plate of { $file }, its curve fitted again

# At the head of each page; the plate's name follows.
plate_head = Plate

plate_foot = For the programme and the lab. A plate holds samples of several makers.

plate_source = From { $file }{ $sheet_is ->
    [named] , sheet “{ $sheet }”, row { $row } on.
   *[none] , line { $row } on.
}

# What the page is worth.
plate_stands = The curve is fitted again here, from the absorbances that the lab sent. What they come to stands beside what the lab reported. It replaces nothing and decides nothing.

plate_curve_head = The curve

plate_curve = { $curve ->
    [four] A logistic curve of four parameters, y = D + (A − D) / (1 + (x / C)^B),
    [five] A logistic curve of five parameters, y = D + (A − D) / (1 + (x / C)^B)^G,
    [spline] A natural cubic spline in log10(x + 1),
   *[straight] Straight lines from each standard to the next,
} through the mean absorbance of each standard’s wells{ $weights ->
    [square] , each with the weight 1/y².
   *[none] .
}

plate_no_curve = No curve could be fitted that only rises or only falls. Nothing is read of this plate.

plate_unit = { $unit ->
    [extract] Concentrations are in ng/mL gliadin in the extract; a gram of food is in { $factor } mL of it, and gluten is twice the gliadin.
   *[food] Concentrations are in { $amount } gluten in the food.
}

plate_parameters = A = { $a }, B = { $b }, C = { $c }, D = { $d }{ $has_g ->
    [yes] , G = { $g }.
   *[no] .
}

plate_residual = Residual standard deviation: { $sd }.

plate_standards_head = Standards and blanks

plate_controls_head = Controls

plate_samples_head = Samples

plate_checks_head = Checks

plate_concentration = Concentration

plate_wells = Wells

plate_absorbances = Absorbances

plate_mean = Mean

plate_read_back = Read back

plate_near = Near enough

plate_control = Control

plate_stated = Stated, { $amount }

plate_package = Package

plate_extraction = Extraction

plate_dilution = Dilution

plate_recomputed = Recomputed, { $amount }

plate_reported = Reported

plate_agree = Agree

plate_check = Check

plate_found = Found

plate_allowed = Allowed

plate_blanks = Blank

plate_check_name = { $check ->
    [monotone] Standards that do not go the way of the others
    [blank] Absorbance of blanks and of zero
    [top] Absorbance of the strongest standard
    [well_cv] Relative standard deviation of wells
    [back_calculated] Standards read back on their curve
   *[recovery] Controls
}

plate_at_most = at most { $figure }

plate_at_least = at least { $figure }

plate_ok = { $ok ->
    [yes] yes
   *[no] no
}

plate_agrees = { $agrees ->
    [yes] yes
    [no] no
   *[unsaid] not compared
}

plate_others = Further wells with samples that are not of this programme: { $wells }.

plate_no_samples = No sample of this programme is on this plate.

plate_key = Circles: standards, each well{ $controls ->
    [yes] ; diamonds: controls
   *[no] { "" }
}{ $samples ->
    [yes] ; crosses: samples, as recomputed
   *[no] { "" }
}{ $reported ->
    [yes] ; open triangles: the same, as reported
   *[no] { "" }
}.

plate_along = { $unit ->
    [extract] Concentration, ng/mL gliadin
   *[food] Concentration, { $amount } gluten
}

plate_up = Absorbance

plate_chart = The absorbances of { $standards ->
    [one] 1 standard
   *[other] { $standards } standards
} from { $lowest } to { $highest } with their curve, and { $samples ->
    [one] 1 sample
   *[other] { $samples } samples
} on it. { $differing ->
    [0] None differs from what was reported.
    [one] One differs from what was reported.
   *[other] Of these, { $differing } differ from what was reported.
}
