//! The registers that people keep, column by column.

use super::{Column, EXAMPLE, Guide, Kind};

const fn needed(
    name: &'static str,
    kind: Kind,
    about: &'static str,
    example: &'static str,
) -> Column {
    Column {
        name,
        is_needed: true,
        kind,
        about,
        example,
    }
}

const fn optional(
    name: &'static str,
    kind: Kind,
    about: &'static str,
    example: &'static str,
) -> Column {
    Column {
        is_needed: false,
        ..needed(name, kind, about, example)
    }
}

/// Every register that people keep, in the order in which they come to need them.
pub const GUIDES: &[Guide] = &[
    PRODUCTS,
    PACKAGES,
    CORRECTIONS,
    REPORTS,
    FOLLOWUPS,
    TERMS,
    BLINDS,
];

const PRODUCTS: Guide = Guide {
    name: "products",
    about: "One row for each product that is tested.",
    is_laid_out: true,
    columns: &[
        needed(
            "product_id",
            Kind::Code,
            "Your own short name for it, in letters without accents, digits, dots and dashes. It stands in the number of its sheet and stays for good.",
            EXAMPLE,
        ),
        needed(
            "name",
            Kind::Text,
            "As printed on the package.",
            "Oat Biscuits",
        ),
        optional(
            "brand",
            Kind::Text,
            "As printed on the package.",
            "Wicker Moon",
        ),
        optional(
            "maker",
            Kind::Text,
            "Whom letters go to, by name.",
            "Wicker Moon Bakery",
        ),
        optional(
            "maker_email",
            Kind::Text,
            "Where drafts of mails to the maker go. A letter can be written without it.",
            "quality@wicker-moon.example",
        ),
        optional(
            "maker_address",
            Kind::Text,
            "The maker’s postal address, parted by commas.",
            "",
        ),
        optional(
            "category",
            Kind::Text,
            "Your own group of foods: the summary counts by it.",
            "biscuits",
        ),
        needed(
            "claim",
            Kind::Text,
            "What the package claims about gluten, word for word. The limit follows from it; what no rule knows gets no verdict.",
            "gluten-free",
        ),
        optional(
            "certifier",
            Kind::Text,
            "Whose certificate the package shows. Needed where oats are certified.",
            "",
        ),
        optional(
            "ingredients",
            Kind::Text,
            "The statement of ingredients, word for word, precautionary words included: it is screened for gluten sources.",
            "oats, sugar, butter, salt",
        ),
        optional(
            "oats",
            Kind::Word(&["none", "unverified", "purity-protocol", "certified"]),
            "What is known of the oats in it; none where it has no oats.",
            "purity-protocol",
        ),
        optional(
            "processing",
            Kind::Word(&["none", "fermented", "hydrolysed"]),
            "Whether its proteins may be in pieces, in which a sandwich assay reports too little gluten.",
            "none",
        ),
        optional(
            "matrix",
            Kind::Text,
            "The kind of food, as a lab needs to know it: cocoa, tea or buckwheat bind gluten.",
            "biscuit",
        ),
        optional(
            "barcode",
            Kind::Code,
            "The digits below the bars.",
            "2000000000015",
        ),
        optional(
            "net_content",
            Kind::Text,
            "As printed on the package.",
            "200 g",
        ),
        optional(
            "serving_g",
            Kind::Figure,
            "A portion as the package gives it, in grams: the sheet then shows what the result means in one.",
            "30",
        ),
    ],
};

const PACKAGES: Guide = Guide {
    name: "packages",
    about: "One row for each package that was bought.",
    is_laid_out: true,
    columns: &[
        needed(
            "package_code",
            Kind::Code,
            "What you write on the package and on the form to the lab, and what the lab reports back: letters without accents, digits, dots and dashes. It should tell nothing of the brand.",
            EXAMPLE,
        ),
        needed("product_id", Kind::Code, "Of which product it is.", "FH-01"),
        optional(
            "round",
            Kind::Code,
            "In which round of testing it is; 1 where blank. Each round of a product is a sheet of its own.",
            "1",
        ),
        optional("lot", Kind::Code, "As printed on the package.", "L31-0771"),
        optional(
            "best_by",
            Kind::Code,
            "As printed on the package.",
            "2031-11-30",
        ),
        optional("bought_on", Kind::Day, "The day of purchase.", "2031-03-04"),
        optional("shop", Kind::Text, "Where it was bought.", "Market Hall"),
        optional(
            "price",
            Kind::Figure,
            "What it cost: a plan reckons with it.",
            "3.49",
        ),
        optional(
            "sent_on",
            Kind::Day,
            "The day it went to the lab. A package without one that the lab has reported nothing of is a spare, and holds nothing up.",
            "2031-03-06",
        ),
        optional(
            "photographs",
            Kind::Text,
            "A folder of this programme folder with its pictures. They are archived, and never published.",
            "photographs/QX-937",
        ),
        optional(
            "custody",
            Kind::Text,
            "Who had it, from when, under which seal. It is never published.",
            "",
        ),
    ],
};

const CORRECTIONS: Guide = Guide {
    name: "corrections",
    about: "One row for each reading that is set aside, or that is a repeat: the sheet says why.",
    is_laid_out: true,
    columns: &[
        needed(
            "file",
            Kind::Text,
            "The lab file, as its path below inbox/.",
            EXAMPLE,
        ),
        needed("package_code", Kind::Code, "Of which package.", "QX-937"),
        optional(
            "extraction",
            Kind::Code,
            "The number of the extraction; blank for all of the package in that file.",
            "2",
        ),
        needed(
            "action",
            Kind::Word(&["exclude", "repeat"]),
            "exclude sets the reading aside; repeat numbers that file’s readings on from those already there.",
            "exclude",
        ),
        needed(
            "reason",
            Kind::Text,
            "Why: it is printed.",
            "The lab found a pipetting mistake",
        ),
        needed(
            "by",
            Kind::Text,
            "Who decided it: it is printed.",
            "the laboratory",
        ),
        needed("on", Kind::Day, "The day it was decided.", "2031-03-20"),
    ],
};

const REPORTS: Guide = Guide {
    name: "reports",
    about: "One row for each lab file of which more is known than it says itself. What stands here goes before what the file says.",
    is_laid_out: true,
    columns: &[
        needed(
            "file",
            Kind::Text,
            "The lab file as its path below inbox/, or a pattern for several (2031-03/*.csv).",
            EXAMPLE,
        ),
        optional(
            "report",
            Kind::Code,
            "The number of the lab’s report.",
            "R-2031-118",
        ),
        optional(
            "issued_on",
            Kind::Day,
            "The day of the report.",
            "2031-03-15",
        ),
        optional(
            "received_on",
            Kind::Day,
            "The day on which the lab received the packages.",
            "2031-03-08",
        ),
        optional(
            "condition",
            Kind::Text,
            "In what condition the packages arrived, as the lab words it.",
            "unopened, dry",
        ),
        optional(
            "tested_from",
            Kind::Day,
            "The first day of testing.",
            "2031-03-10",
        ),
        optional(
            "tested_to",
            Kind::Day,
            "The last day of testing.",
            "2031-03-11",
        ),
        optional(
            "lloq_ppm",
            Kind::Figure,
            "The lower limit of quantification, in ppm of gluten.",
            "5",
        ),
        optional(
            "lod_ppm",
            Kind::Figure,
            "The limit of detection, in ppm of gluten.",
            "3",
        ),
        optional(
            "uncertainty",
            Kind::Text,
            "The measurement uncertainty as the lab words it: 20 % (k = 2).",
            "20 % (k = 2)",
        ),
        optional(
            "accredited",
            Kind::Word(&["yes", "no"]),
            "Whether the lab is accredited for this method.",
            "yes",
        ),
        optional(
            "supersedes",
            Kind::Text,
            "A lab file that this one replaces: none of its readings is used.",
            "",
        ),
        optional(
            "certificate",
            Kind::Text,
            "The report as a PDF, as its path below inbox/.",
            "",
        ),
    ],
};

const FOLLOWUPS: Guide = Guide {
    name: "followups",
    about: "One row for each letter, reply and action. `galleyproof log` writes them where this register is a .csv file.",
    is_laid_out: true,
    columns: &[
        needed("product_id", Kind::Code, "Of which product.", EXAMPLE),
        optional(
            "round",
            Kind::Code,
            "Of which round; blank where the product has one.",
            "1",
        ),
        needed("on", Kind::Day, "The day it happened.", "2031-04-02"),
        needed(
            "kind",
            Kind::Word(&["notice-sent", "reply", "action", "closed"]),
            "What happened. A product over the limit is published once the maker was told and has answered, or the day for it has passed.",
            "notice-sent",
        ),
        optional(
            "due_on",
            Kind::Day,
            "With notice-sent: until when a reply is awaited.",
            "2031-04-24",
        ),
        optional(
            "statement",
            Kind::Text,
            "What may be printed: with reply the maker’s own words, which are quoted; with the others yours.",
            "",
        ),
        optional(
            "note",
            Kind::Text,
            "For yourself; it is printed nowhere.",
            "Sent by post and mail",
        ),
    ],
};

const TERMS: Guide = Guide {
    name: "terms",
    about: "One row for each word on a label that the built-in table does not know. Optional.",
    is_laid_out: false,
    columns: &[
        needed(
            "term",
            Kind::Text,
            "The words as labels have them, several parted by semicolons.",
            EXAMPLE,
        ),
        needed(
            "grain",
            Kind::Text,
            "Which grain it is of: wheat, rye, barley, triticale, oats or other.",
            "barley",
        ),
        needed(
            "class",
            Kind::Word(&["always", "depends", "exempt", "look-alike"]),
            "Whether it is always a gluten source, depends on how it was made, is exempt under a rule, or only looks like one.",
            "depends",
        ),
        optional(
            "exceptions",
            Kind::Text,
            "Words in which it is none, parted by semicolons.",
            "",
        ),
        optional("why", Kind::Text, "Why, in a sentence: it is printed.", ""),
        optional("source", Kind::Text, "Where that is written.", ""),
    ],
};

const BLINDS: Guide = Guide {
    name: "blinds",
    about: "The key of packages of known content that go to the lab with the others. Optional, and private.",
    is_laid_out: false,
    columns: &[
        needed(
            "package_code",
            Kind::Code,
            "Its code, like any other’s.",
            EXAMPLE,
        ),
        needed(
            "content",
            Kind::Word(&["no-gluten", "gluten-added"]),
            "What it is.",
            "gluten-added",
        ),
        optional(
            "food",
            Kind::Text,
            "What it looks like: the form to the lab calls it so.",
            "rice flour",
        ),
        optional(
            "added_ppm",
            Kind::Figure,
            "How much gluten was added, in ppm.",
            "30",
        ),
        optional(
            "round",
            Kind::Code,
            "With which round it goes; 1 where blank.",
            "1",
        ),
    ],
};
