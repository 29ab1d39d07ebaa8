# What is said of a label: on the sheet under "Label review", in the letter to the maker, in the newsletter.

## What the sentences are made of

# What stands for the words where the finding rests on the register and not on a word of the list.
label_one_ingredient = Un ingrediente

# The grain of a word, in brackets after it.
label_grain = { $grain ->
    [wheat] trigo
    [barley] cebada
    [rye] centeno
    [triticale] triticale
    [oats] avena
    [wheat_or_barley] trigo o cebada
    [barley_or_wheat] cebada o trigo
    [wheat_or_rye] trigo o centeno
   *[wheat_rye_or_barley] trigo, centeno o cebada
}

# A language in which the review reads lists.
label_language = { $language ->
    [english] en inglés
    [german] en alemán
    [spanish] en español
    [french] en francés
   *[italian] en italiano
}

# What the rule says of a gluten source as an ingredient. 21 CFR 101.91(a)(3); CXS 118-1979, 2.1.1; Food and Drug Regulations,
# B.24.018; Resolución Conjunta 32/2023; Reglamento Sanitario de los Alimentos, 516 to 518; Standard 1.2.7.
label_source_rule = { $regime ->
    [us] Salvo que se haya procesado para eliminar el gluten, la norma 21 CFR 101.91 no la admite como ingrediente de un alimento vendido como «{ $claim }», sea cual sea el resultado del análisis.
    [codex] Salvo que se haya procesado especialmente para eliminar el gluten, la norma CXS 118 del Codex no la admite como ingrediente de un alimento vendido como «{ $claim }», sea cual sea el resultado del análisis.
    [eu] El Reglamento (UE) n.º 828/2014 no la admite como ingrediente de un alimento vendido como «{ $claim }», sea cual sea el resultado del análisis.
    [canada] La disposición B.24.018 de las Food and Drug Regulations de Canadá no la admite como ingrediente de un alimento vendido como «{ $claim }», sea cual sea el resultado del análisis.
    [argentina] La Resolución Conjunta 32/2023 no la admite como ingrediente de un alimento vendido como «{ $claim }», sea cual sea el resultado del análisis.
    [chile] El Reglamento Sanitario de los Alimentos no la admite como ingrediente de un alimento vendido como «{ $claim }», sea cual sea el resultado del análisis.
    [au_nz] La norma 1.2.7 del Food Standards Code no la admite como ingrediente de un alimento vendido como «{ $claim }», sea cual sea el resultado del análisis.
   *[custom] La norma del programa no la admite como ingrediente de un alimento vendido como «{ $claim }», sea cual sea el resultado del análisis.
}

## The finding

# The list is in none of the languages, or too little of it is.
label_unread = No pudimos leer esta lista: nada de ella, o demasiado poco, está en inglés, alemán, español, francés o italiano. No dice nada a favor ni en contra del alimento hasta que alguien la haya leído.

# A gluten source that the rule does not allow with this claim.
label_source = { $n ->
    [one] { $terms } designa una fuente de gluten. { label_source_rule }
   *[other] { $terms } designan una fuente de gluten. { label_source_rule }
}

# Oats, and the register says nothing of how they were kept apart. R5 and like antibodies do not see oats.
label_oats = La lista nombra avena, y no nos consta cómo se cultivó ni cómo se molió. La avena se mezcla fácilmente con trigo, centeno y cebada; el ensayo detecta esos tres y no la avena misma.

# Words that may or may not name a gluten source.
label_asked = { $terms }: que sea una fuente de gluten depende de cómo se elaboró. Es una pregunta al fabricante, no un resultado.

# Gluten sources that the rule does not forbid. "amount": Regulation (EU) No 828/2014, Annex A, limits the amount alone.
# "processed": claims such as "very low gluten". "unsaid": a limit of the programme's own. "unknown_claim": the claim is not settled.
label_not_forbidden = { $leave ->
    [amount] { $n ->
        [one] { $terms }: una fuente de gluten que la norma de esta declaración no prohíbe. El Reglamento (UE) n.º 828/2014 solo atiende al contenido de gluten.
       *[other] { $terms }: fuentes de gluten que la norma de esta declaración no prohíbe. El Reglamento (UE) n.º 828/2014 solo atiende al contenido de gluten.
    }
    [processed] { $n ->
        [one] { $terms }: una fuente de gluten que la norma de esta declaración no prohíbe. Los alimentos con esta declaración se elaboran con cereales tratados para reducir su gluten.
       *[other] { $terms }: fuentes de gluten que la norma de esta declaración no prohíbe. Los alimentos con esta declaración se elaboran con cereales tratados para reducir su gluten.
    }
    [unsaid] { $n ->
        [one] { $terms }: una fuente de gluten. La norma propia del programa fija un límite y no dice nada de los ingredientes.
       *[other] { $terms }: fuentes de gluten. La norma propia del programa fija un límite y no dice nada de los ingredientes.
    }
   *[unknown_claim] { $n ->
        [one] { $terms }: una fuente de gluten. No está aclarado qué declara el envase sobre el gluten, así que no se aplica ninguna norma sobre ingredientes.
       *[other] { $terms }: fuentes de gluten. No está aclarado qué declara el envase sobre el gluten, así que no se aplica ninguna norma sobre ingredientes.
    }
}

# The register has no list of ingredients.
label_no_list = No nos consta ninguna lista de ingredientes de este producto, así que no había nada que revisar.

# The list was read, and nothing was found.
label_nothing = Ningún término de la lista designa una fuente de gluten.

## What the rule says besides

# Where the list names oats. 21 CFR 101.91; CXS 118-1979, footnote 1; Regulation (EU) No 828/2014, Annex B; SOR/2015-114.
label_oats_rule = { $regime ->
    [us] Según la norma 21 CFR 101.91 la avena no es un cereal con gluten; aun así, el alimento debe quedar por debajo de 20 ppm.
    [codex] La norma CXS 118 del Codex deja a cada país decidir si se admite la avena.
    [eu] Según el Reglamento (UE) n.º 828/2014 la avena debe producirse de modo que se evite su contaminación con otros cereales, y su contenido de gluten no puede sobrepasar 20 mg/kg.
    [canada] Canadá admite la avena producida de modo especial, con no más de 20 ppm de gluten de otros cereales y denominada avena sin gluten (SOR/2015-114).
   *[chile] No está aclarado si la norma de Chile admite la avena.
}

# Where the list names starch of wheat. The same sources, and Standard 1.2.7, Resolución Conjunta 32/2023, article 518.
label_starch_rule = { $regime ->
    [us] La norma 21 CFR 101.91 admite el almidón de trigo tratado para eliminar el gluten si el alimento queda por debajo de 20 ppm; si la etiqueta dice «wheat», debe añadir que el trigo se trató para cumplir la norma.
    [codex] La norma CXS 118 del Codex admite el almidón de trigo tratado de modo especial para eliminar el gluten, hasta 20 mg/kg.
    [eu] El Reglamento (UE) n.º 828/2014 no prohíbe el almidón de trigo en un alimento sin gluten; decide el contenido de gluten.
    [canada] La disposición B.24.018 no admite ninguna proteína de gluten de trigo como ingrediente.
    [argentina] La Resolución Conjunta 32/2023 admite como máximo 10 mg/kg.
    [chile] El Reglamento Sanitario de los Alimentos admite como máximo 5 mg/kg.
   *[au_nz] La norma 1.2.7 no admite gluten detectable en un alimento vendido como sin gluten.
}

# Where the register says how the oats were kept apart.
label_oats_register = { $oats ->
    [apart] Según nuestro registro, la avena se cultivó y se molió separada de otros cereales. El ensayo no detecta la avena misma.
   *[certified] Según nuestro registro, el certificador del producto cubre la avena. El ensayo no detecta la avena misma.
}

## Why

# Why words count; $why is a whole sentence.
label_explained = { $terms }: { $why }

# The same with the grain.
label_explained_of = { $terms } ({ $grain }): { $why }

# More words than a sheet has room to explain.
label_more = Los demás están en los archivos de datos.

# In which languages the list was read.
label_read_in = La lista se leyó { $languages }.

# Marks the review as an opinion (ISO/IEC 17025:2017, 7.8.7, of a laboratory's own reports).
label_opinion = Es nuestra lectura, no un resultado del laboratorio.

## Beside the verdict

# What the label comes to, in few words: in a block beside that of the verdict at the head of the sheet, and beside the verdict in
# every list. $term is the first word in question, as printed on the package; $more counts the others.
label_judged = { $kind ->
    [source] { $named ->
        [one] La etiqueta nombra «{ $term }»
        [more] La etiqueta nombra «{ $term }» y { $more } más
       *[none] La etiqueta nombra una fuente de gluten
    }
    [allowed] { $named ->
        [more] La etiqueta nombra «{ $term }» y { $more } más (no prohibido)
       *[other] La etiqueta nombra «{ $term }» (no prohibido)
    }
    [oats] Etiqueta: avena de origen desconocido
    [ask] { $named ->
        [one] Etiqueta por aclarar: «{ $term }»
        [more] Etiqueta por aclarar: «{ $term }» y { $more } más
       *[none] Etiqueta por aclarar
    }
    [unread] Etiqueta aún sin leer
    [no_list] Sin etiqueta registrada
   *[nothing] Etiqueta: sin hallazgos
}

# In the block below these words.
label_judged_why = { $why ->
    [source] La norma no admite un ingrediente así, sea cual sea el resultado del análisis.
    [amount] La norma para esta indicación limita la cantidad de gluten, no los ingredientes.
    [processed] Un alimento con esta indicación puede ser de cereal tratado para reducir el gluten.
    [unsaid] La norma propia del programa no dice nada sobre los ingredientes.
    [unknown_claim] No está aclarado qué indica el envase; no se aplica ninguna norma.
    [oats] No tenemos constancia de cómo se cultivó y molió.
    [ask] Si es una fuente de gluten es una pregunta para el fabricante.
    [unread] Nada, o muy poco, está en un idioma que leemos.
    [no_list] No había lista de ingredientes que revisar.
   *[nothing] Ninguna de las palabras que buscamos figura en la lista.
}

## The table of terms

# Why a word counts, by the word that the table has in its column "why". What must be asked is asked of the maker, not here.
label_why = { $why ->
    [why_wheat] El trigo es un cereal con gluten.
    [why_flour] La harina sin nombre de planta es harina de trigo.
    [why_milled_wheat] Trigo molido, salvo que se nombre otra planta.
    [why_old_wheat] Una variedad antigua de trigo, un cereal con gluten, se venda como se venda.
    [why_made_of_wheat] Hecho de trigo, salvo que se nombre otra planta.
    [why_pasta] La pasta sin nombre de planta es de trigo.
    [why_orzo] Una pasta de trigo; en italiano, cebada.
    [why_gluten] El gluten mismo.
    [why_soba] El soba suele mezclar trigo con el alforfón.
    [why_wheat_in_pieces] Proteína de trigo fragmentada: un ensayo sándwich da de ella demasiado poco.
    [why_wheat_kernel] Parte del grano de trigo.
    [why_purified] Puede estar tan purificado que quede poca proteína.
    [why_wheat_starch] El almidón de trigo conserva gluten si no se trató para eliminarlo.
    [why_wheat_syrup] Obtenido de almidón de trigo; en Europa, exento de declararse como alérgeno. El límite rige de todos modos.
    [why_barley_syrup] Obtenido de almidón de cebada; en Europa, exento de declararse como alérgeno. El límite rige de todos modos.
    [why_baked] Los productos de panadería son de harina de trigo, salvo que se declaren sin gluten.
    [why_triticale] Un cruce de trigo y centeno, nombrado como cereal con gluten.
    [why_rye] El centeno es un cereal con gluten.
    [why_barley] La cebada es un cereal con gluten.
    [why_barley_fibre] Una fibra de cebada.
    [why_malt] La malta sin nombre de planta es cebada malteada.
    [why_malt_distilled] Destilado, pero de cebada malteada.
    [why_other_malt] El grano no tiene gluten, pero pueden haberse usado enzimas de cebada.
    [why_beer] Elaborado con malta de cebada o de trigo.
    [why_soft_drink] Un refresco.
    [why_brewers_yeast] La levadura de cerveza usada contiene proteína de cereal; la cultivada en remolacha, no.
    [why_yeast_extract] Puede hacerse con levadura de cerveza usada.
    [why_soy_sauce] Suele elaborarse con trigo.
    [why_tamari] A menudo se elabora sin trigo, pero no siempre.
    [why_barley_miso] Fermentado con cebada.
    [why_miso] Puede estar fermentado con cebada o trigo.
    [why_fu] En la cocina japonesa, gluten de trigo.
    [why_no_plant] No se nombra la planta.
    [why_starch_in_the_us] No se nombra la planta. En los Estados Unidos el almidón sin más es de maíz, y el trigo debe nombrarse.
    [why_distilled] La destilación deja atrás la proteína.
    [why_unnamed] Puede llevar trigo o cebada sin nombrarlos.
    [why_oats] La avena suele cultivarse, transportarse y molerse junto con cereales con gluten.
    [why_oats_gluten_free] El envase llama a su avena sin gluten; el programa no tiene prueba de ello si no consta en el registro.
    [why_grass] La hoja no tiene gluten, pero pueden pasar semillas.
    [why_another_plant] Otra planta, o un país.
    [why_buckwheat] No es un trigo.
    [why_letters_of_malt] Solo comparte letras con la malta.
    [why_enzymes] Pueden haberse usado enzimas de cebada.
    [why_sticky] Glutinoso significa pegajoso.
    [why_other_gluten] La proteína del maíz o del arroz no es gluten en este sentido.
    [why_statement] Una declaración sobre el alimento y no un ingrediente.
    [why_no_gluten] Un alimento sin gluten propio.
    [why_nothing] No tiene que ver con el gluten.
    [why_plant_named] Se nombra otra planta.
    [why_wheat_german] Trigo, en alemán.
    [why_rye_german] Centeno, en alemán.
    [why_barley_german] Cebada o malta, en alemán.
    [why_plant_german] Una planta sin gluten, en alemán.
    [why_wheat_french] Trigo, en francés.
    [why_rye_french] Centeno, en francés.
    [why_barley_french] Cebada o malta, en francés.
    [why_plant_french] Una planta sin gluten, en francés.
    [why_wheat_spanish] Trigo, en español.
    [why_rye_spanish] Centeno, en español.
    [why_barley_spanish] Cebada o malta, en español.
    [why_plant_spanish] Una planta sin gluten, en español.
    [why_wheat_italian] Trigo, en italiano.
    [why_grano] En italiano, trigo; en español, cualquier grano.
    [why_rye_italian] Centeno, en italiano.
    [why_barley_italian] Cebada o malta, en italiano.
    [why_plant_italian] Una planta sin gluten, en italiano.
    [why_declared] El envase declara gluten.
    [why_pointer] Una remisión a la lista de ingredientes y no un ingrediente.
    [why_no_grain] No se nombra el cereal.
    [why_wheat_dextrin] Obtenido de trigo; queda poca proteína si se purificó.
    [why_rice_miso] Fermentado con arroz, pero a veces se hace con cebada.
    [why_sourdough] No se nombra el cereal de la masa madre.
    [why_coix] Una hierba llamada cebada que no lo es (Coix).
    [why_bread] Hecho de harina de trigo, salvo que se nombre otra planta o se declare sin gluten.
   *[why_cross] Un cruce de trigo y centeno, o de trigo y cebada.
}
