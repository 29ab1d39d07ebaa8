//! In which languages a statement was read: by the words of lists of ingredients that belong to each.

use crate::judge::labels::terms::Match;
use crate::judge::labels::words::{Kind, Token};
use crate::model::label::LabelLanguage;
use LabelLanguage::{English, French, German, Italian, Spanish};
use std::collections::HashMap;
use std::sync::LazyLock;

/// Common words of lists of ingredients, a language a row; those that begin so where "*" stands. Without accents.
const WORDS: &[(LabelLanguage, &str)] = &[
    (
        English,
        "ingredients ingredient contains contain the and of from with or may less than made water salt sugar oil flour starch milk \
         egg eggs butter cream cheese yeast powder juice vinegar spice spices sauce syrup seed seeds nut nuts rice corn wheat \
         rye barley oats oat malt bean beans pea peas lentil lentils chickpea chickpeas potato potatoes tapioca almond almonds \
         peanut peanuts cashew coconut cocoa chocolate honey apple apples banana strawberry raisins raisin lemon orange tomato \
         tomatoes onion garlic pepper natural flavor flavoring organic whole grain gum acid extract protein fiber fruit fruits \
         vegetable vegetables chicken beef pork fish palm sunflower rapeseed canola soy soybean soya emulsifier thickener \
         preservative color baking soda raising agent cane brown dried fresh roasted puffed dates date berry berries blueberry \
         cinnamon vanilla ginger turmeric mustard celery sesame flax millet buckwheat kale spinach carrot carrots goat mushroom \
         mushrooms oyster beer ale brandy root cereal cereals bread biscuit wine coffee tea shrimp tuna gelatin gelatine salted unsalted sea cultured \
         enriched modified food ground paste puree concentrate leaf herbs herb ghee kombucha stevia erythritol sorbitol xylitol dextrose glucose fructose sucrose lactose casein whey collagen \
         pectin agar carrageenan cellulose lecithin enzymes vitamin vitamins iron calcium sodium potassium niacin riboflavin thiamine \
         folic citric ascorbic avocado mango peach peaches pear pears grape grapes figs fig plum plums cherry cherries pineapple kiwi melon \
         cucumber celery cauliflower broccoli cabbage beet beets pumpkin squash zucchini eggplant olive olives caper basil oregano thyme \
         parsley rosemary cumin coriander paprika chili chilli cayenne nutmeg clove cloves cardamom saffron molasses treacle maple agave \
         caramel toffee jam jelly marmalade yogurt yoghurt kefir tofu tempeh ham bacon sausage turkey lamb salmon cod crab lobster \
         quinoa amaranth teff sorghum chia hemp lard tallow margarine shortening walnut walnuts hazelnut hazelnuts pecan pecans pistachio \
         macadamia sprouts pasta noodles crackers cookies cookie cake mix blend free",
    ),
    (
        German,
        "zutaten enthalt und oder mit aus von ohne kann spuren wasser salz zucker ol mehl starke milch ei eier butter sahne \
         rahm kase hefe pulver saft essig gewurz* sosse sauce sirup samen nuss nusse reis* mais* weizen* roggen* gerste* \
         gersten* hafer* dinkel* malz* bohnen erbsen* linsen* kichererbsen* kartoffel* tapioka* mandel* erdnuss* haselnuss* \
         kokos* kakao* schokolade* honig apfel* zitrone* tomate* zwiebel* knoblauch pfeffer aroma naturliches vollkorn* \
         sonnenblumen* raps* palm* soja* emulgator verdickungsmittel saureungsmittel konservierungsstoff farbstoff backpulver \
         backtriebmittel sauerteig* hirse* buchweizen* eiweiss pflanzlich* fleisch* rind* schwein* huhn* fisch* butterreinfett \
         speisesalz meersalz steinsalz sonnenblumenol palmol rapsol trockenhefe gerstengras* leinsamen mohn sesam sauerungsmittel \
         glukosesirup glucosesirup maltodextrin dattel* feige* pflaume* birne* kirsche* erdbeere* himbeere* traube* rosinen banane* \
         mohre* karotte* gurke* kurbis* spinat kohl sellerie senf paprika zimt vanille ingwer petersilie oliven olivenol quark joghurt",
    ),
    (
        French,
        "ingredients contient et ou avec sans peut contenir traces de du des la le les eau sel sucre huile farine amidon fecule \
         lait oeuf oeufs beurre creme fromage levure poudre jus vinaigre epices sauce sirop graines noix riz mais ble seigle orge \
         avoine malt haricots pois lentilles chiche chiches pomme pommes terre amande amandes cacahuete arachide noisettes coco \
         cacao chocolat miel citron tomate tomates oignon ail poivre arome naturel complet colza tournesol palme soja emulsifiant \
         epaississant conservateur colorant acidifiant poudre lever sarrasin millet proteines viande boeuf porc poulet poisson \
         chataigne biologique lecithine correcteur figues figue dattes prunes poire poires fraises cerises raisins carottes courge epinards \
         chou moutarde celeri cannelle vanille gingembre persil olives yaourt",
    ),
    (
        Spanish,
        "ingredientes contiene y o con sin puede contener trazas de del la el los agua sal azucar aceite harina almidon fecula leche \
         huevo huevos mantequilla nata queso levadura polvo zumo jugo vinagre especias salsa jarabe semillas nueces arroz maiz \
         trigo centeno cebada avena malta judias frijoles guisantes lentejas garbanzo garbanzos patata patatas papa mandioca almendra \
         almendras cacahuete mani avellanas coco cacao chocolate miel manzana limon tomate cebolla ajo pimienta aroma natural \
         integral girasol colza palma soja emulgente emulsionante espesante conservador conservante colorante gasificante \
         sarraceno mijo proteinas carne cerdo pollo pescado castana ecologico ciruelas ciruela higos datiles peras fresas cerezas pasas zanahoria \
         calabaza espinacas col mostaza apio canela vainilla jengibre perejil aceitunas yogur",
    ),
    (
        Italian,
        "ingredienti contiene e o con senza puo contenere tracce di del della il la acqua sale zucchero olio farina amido fecola latte \
         uovo uova burro panna formaggio lievito polvere succo aceto spezie salsa sciroppo semi noci riso mais frumento grano \
         segale orzo avena malto fagioli piselli lenticchie ceci patata patate manioca mandorle arachidi nocciole cocco cacao \
         cioccolato miele mela limone pomodoro pomodori cipolla aglio pepe aroma naturale integrale girasole colza palma soia \
         emulsionante addensante conservante colorante agente lievitante saraceno miglio proteine carne manzo maiale pollo pesce \
         castagne biologico prugne fichi datteri pere fragole ciliegie uvetta carote zucca spinaci cavolo senape sedano cannella \
         vaniglia zenzero prezzemolo olive yogurt",
    ),
];

/// Words of lists of ingredients in languages that are not read: Dutch, Portuguese, Danish, Norwegian, Swedish, Finnish,
/// Polish, Czech, Slovak, Hungarian, Romanian, Croatian, Slovene, Turkish, Estonian, Latvian, Lithuanian.
const OTHERS: &str = "ingredienten bevat suiker zout meel tarwe* rogge haver gerst zetmeel melk boter eieren olie kan sporen \
    bevatten acucar farinha oleo ovos leite amido trigo aveia cevada centeio contem pode conter agua milho \
    ingredienser indeholder inneholder innehaller og och eller med kan sukker socker salt mel mjol hvede* hvete* vete* rug* rag \
    havre* byg* bygg* korn stivelse starkelse aeg agg smor smør vand vann vatten gaer gjaer jast spor \
    ainekset sisaltaa sokeri suola jauho* vehna* ruis* kaura* ohra* vesi maito tarkkelys \
    skladniki zawiera cukier sol maka pszenn* pszenica zyto zytni* owies owsian* jeczmie* slod* woda mleko jaja olej skrobia \
    slozeni zlozenie obsahuje cukr cukor mouka muka psenic* zito zitn* oves ovesn* jecmen* jacmen* voda mleko mlieko vejce skrob \
    osszetevok tartalmaz cukor so liszt buza* rozs* zab* arpa* viz tej tojas kemenyito \
    ingrediente contine zahar sare faina grau secara ovaz orz apa lapte \
    sastojci sadrzi secer brasno psenica raz zob jecam voda \
    sestavine vsebuje sladkor moka psenicna \
    icindekiler icerir seker tuz un bugday cavdar yulaf arpa su sut nisasta \
    koostisosad sisaldab suhkur sool jahu nisu* kaer* oder* \
    sastavdalas satur cukurs sals milti kviesu rudzu auzu miezu \
    sudetis cukrus druska miltai kvieciu rugiu aviziu mieziu";

/// The words of all lists, each with the languages that have it; the last bit is for those that are not read.
static KNOWN: LazyLock<Known> = LazyLock::new(Known::of_all);

/// The bit of languages that are not read.
const STRANGE: u8 = 1 << 7;

struct Known {
    words: HashMap<&'static str, u8>,
    /// By first letter, those that stand for every word that begins so.
    beginnings: HashMap<char, Vec<(&'static str, u8)>>,
}

impl Known {
    fn of_all() -> Known {
        let mut known = Known {
            words: HashMap::new(),
            beginnings: HashMap::new(),
        };
        for (at, (_, list)) in WORDS.iter().enumerate() {
            known.add(list, 1 << at);
        }
        known.add(OTHERS, STRANGE);
        known
    }

    fn add(&mut self, list: &'static str, bit: u8) {
        for word in list.split_whitespace() {
            match (word.strip_suffix('*'), word.chars().next()) {
                (Some(start), Some(first)) => {
                    let same = self.beginnings.entry(first).or_default();
                    same.push((start, bit));
                }
                _ => *self.words.entry(word).or_default() |= bit,
            }
        }
    }

    /// The languages that have a word, a bit each.
    fn languages(&self, word: &str) -> u8 {
        let whole = self.words.get(word).copied().unwrap_or_default();
        let beginnings = word
            .chars()
            .next()
            .and_then(|first| self.beginnings.get(&first));
        beginnings
            .into_iter()
            .flatten()
            .filter(|(start, _)| word.starts_with(start))
            .fold(whole, |bits, (_, bit)| bits | bit)
    }
}

/// How a statement was read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Reading {
    /// The languages whose words it holds.
    pub languages: Vec<LabelLanguage>,
    /// Whether it holds words, and none that is known, or more of another language.
    pub unread: bool,
}

/// How a statement was read. A word that several languages share speaks for each of them only where none has words of its own.
pub fn read(tokens: &[Token], matches: &[Match<'_>]) -> Reading {
    let words: Vec<&str> = tokens
        .iter()
        .filter_map(|token| match &token.kind {
            Kind::Word(text, _)
                if text.chars().count() > 1 && text.chars().all(char::is_alphabetic) =>
            {
                Some(text.as_str())
            }
            _ => None,
        })
        .collect();
    let mut own = [0_usize; 5];
    let mut shared = [0_usize; 5];
    let (mut known, mut strange) = (0, 0);
    for word in &words {
        let bits = KNOWN.languages(word);
        let of: Vec<usize> = (0..WORDS.len())
            .filter(|at| bits & (1 << at) != 0)
            .collect();
        known += usize::from(!of.is_empty());
        let other = !word.is_ascii() || bits & STRANGE != 0;
        strange += usize::from(of.is_empty() && other);
        for at in &of {
            shared[*at] += 1;
            own[*at] += usize::from(of.len() == 1);
        }
    }
    let named: usize = matches
        .iter()
        .map(|found| found.last + 1 - found.first)
        .sum();
    let unread = !words.is_empty() && (known.max(named) == 0 || strange > known.max(named));
    let counts = if own.iter().any(|n| *n > 0) {
        own
    } else {
        shared
    };
    let most = counts.iter().copied().max().unwrap_or_default();
    let languages = WORDS
        .iter()
        .zip(counts)
        .filter(|(_, n)| !unread && !words.is_empty() && (*n == most || *n > 1))
        .map(|((language, _), _)| *language)
        .collect();
    Reading { languages, unread }
}
