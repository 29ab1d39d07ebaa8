//! Writes what the targets start from into `tests/fuzz/corpus`, made of files that stand in the tree anyway: the workbooks
//! of the tests, the demo's inbox and registers. Workbooks are taken apart into the pieces that the targets put together.

use galleyproof_fuzz::pieces::{self, BETWEEN};
use galleyproof_fuzz::{issues, kept, told};
use std::fs;
use std::io::Read;
use std::path::{Path, PathBuf};

fn main() {
    let top = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let mut files = Vec::new();
    for folder in [
        "tests/workbooks",
        "examples/inbox/2030",
        "examples/inbox/2031",
    ] {
        files.extend(listed(&top.join(folder)));
    }
    // Further workbooks of one's own, in a folder that is named.
    files.extend(
        std::env::args()
            .skip(1)
            .flat_map(|folder| listed(Path::new(&folder))),
    );
    for path in files {
        let bytes = fs::read(&path).expect("can be read");
        workbook(&path, &bytes);
    }
    whole(&top);
    archived();
}

fn listed(folder: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).expect("can be listed");
    let mut files: Vec<_> = entries.flatten().map(|entry| entry.path()).collect();
    files.sort();
    files.retain(|path| path.is_file());
    files
}

fn write(target: &str, name: &str, bytes: &[u8]) {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("corpus")
        .join(target);
    fs::create_dir_all(&folder).expect("makes a folder");
    fs::write(folder.join(name), bytes).expect("writes");
}

fn workbook(path: &Path, bytes: &[u8]) {
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    match path.extension().and_then(|ending| ending.to_str()) {
        Some("xlsx" | "xlsm") => write("book_xlsx", &name, &taken_apart(bytes, &pieces::XLSX)),
        Some("xlsb") => write("book_xlsb", &name, &taken_apart(bytes, &pieces::XLSB)),
        Some("ods") => write("book_ods", &name, &taken_apart(bytes, &pieces::ODS)),
        Some("xls") => write("book_xls", &name, bytes),
        Some("csv") => {
            write("book_csv", &name, bytes);
            let layout = b"[[layout]]\nfiles = \"*\"\nheader_row = 1\ncolumns = { sample = \"Sample\" }\ncells = { lab = \"B2\" }\n";
            write("layouts", &name, &[&layout[..], bytes].join(BETWEEN));
        }
        _ => {}
    }
}

fn taken_apart(bytes: &[u8], names: &[&str]) -> Vec<u8> {
    let Ok(mut archive) = zip::ZipArchive::new(std::io::Cursor::new(bytes)) else {
        return bytes.to_vec();
    };
    let parts: Vec<Vec<u8>> = names
        .iter()
        .map(|name| {
            let mut part = Vec::new();
            if let Ok(mut file) = archive.by_name(name) {
                let _ = file.read_to_end(&mut part);
            }
            part
        })
        .collect();
    parts.join(BETWEEN)
}

/// A whole programme: its settings, and its registers with one of its lab files.
fn whole(top: &Path) {
    let demo = top.join("examples");
    let settings = fs::read(demo.join("programme.toml")).expect("can be read");
    write("settings", "demo", &settings);
    let columns = "product_id,name,claim,ingredients,oats,processing\nP1,Harbour Loaf,gluten-free,\"Water, oats, barley malt\",certified,none\n";
    let packages = "package_code,product_id,round,sent_on,bought_on\nTKW-101,P1,1,2031-03-01,2031-02-28\nTKW-102,P1,1,2031-03-01,28.2.2031\nTKW-103,P1,1,,\n";
    let corrections = "file,package_code,extraction,action,reason,by,on\ninbox/a.csv,TKW-101,1,exclude,spilt,A. B.,2031-03-09\n";
    let followups = "product_id,on,kind,due_on,statement,note\nP1,2031-03-10,notice-sent,2031-04-10,,\nP1,2031-03-20,reply,,We are sorry.,private\n";
    let reports =
        "file,report,issued_on,lloq_ppm,lod_ppm,accredited\ninbox/a.csv,77,2031-03-09,5,3,yes\n";
    let terms = "term,grain,class,why\nmarsh crumb,wheat,always,Made of wheat flour.\n";
    let blinds = "package_code,content,food,added_ppm,round\nTKW-109,gluten-added,bread,40,1\n";
    let issued = "sheet_number,product_id,round,revision,issued_on,content_sha256,reason,changed,verdict,label,early\nTKW-P1-1,P1,1,1,2031-04-01,ab12,,,within_limit,none,\n";
    let lab_file = "Sample,Extraction,Gluten (ppm),LOQ\nTKW-101,1,<5,5\nTKW-101,2,7.1,5\nTKW-102,1,\"8,3\",5\nTKW-102,2,8.1 ± 2,5\nTKW-103,1,ND,5\nTKW-103,2,>80,5\nTKW-109,1,38,5\n";
    let mine = [
        columns,
        packages,
        corrections,
        followups,
        reports,
        terms,
        blinds,
        issued,
        lab_file,
    ];
    write("registers", "small", &mine.map(str::as_bytes).join(BETWEEN));
    let mail = |name| fs::read(top.join("report-templates").join(name)).expect("can be read");
    let with_mails = |kept: Vec<u8>| {
        let mut all = vec![kept];
        all.extend(told::MAILS.map(mail));
        all.join(BETWEEN)
    };
    write(
        "facts",
        "small",
        &with_mails(mine.map(str::as_bytes).join(BETWEEN)),
    );
    let of_demo: Vec<Vec<u8>> = kept::REGISTERS
        .iter()
        .map(|name| fs::read(demo.join(format!("registers/{name}.csv"))).unwrap_or_default())
        .chain([fs::read(demo.join("inbox/2031/HV-31-0203.csv")).expect("can be read")])
        .collect();
    write("registers", "demo", &of_demo.join(BETWEEN));
    write("facts", "demo", &with_mails(of_demo.join(BETWEEN)));
    let two =
        format!("{issued}TKW-P1-1,P1,1,2,2031-05-01,ab13,New lot,\"a -> b\",over_limit,none,\n");
    let changed = two.replace("2031-05-01", "1.5.2031").replace(',', ";");
    write(
        "issued",
        "grown",
        &[issued.as_bytes(), two.as_bytes()].join(BETWEEN),
    );
    write(
        "issued",
        "changed",
        &[changed.as_bytes(), two.as_bytes()].join(BETWEEN),
    );
}

/// A bag, and a sheet with a case.
fn archived() {
    let manifest = "SUM data/0\nSUM data/1\n";
    let tags = "SUM bagit.txt\nSUM manifest-sha256.txt\nSUM bag-info.txt\n";
    let pieces = [
        "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n",
        manifest,
        tags,
        "Payload-Oxum: 6.2\nBagging-Date: 2031-05-01\n",
        "one",
        "two",
    ];
    assert_eq!(pieces.len(), issues::TAGS.len() + 2);
    write("bags", "sound", &pieces.map(str::as_bytes).join(BETWEEN));
    let case = r#"{"sheet_number":"TKW-P1-1","content_sha256":"ab","carried":[{"name":"a.excerpt.csv","sha256":"cd"},{"name":"TKW-P1-1.json","sha256":"ef"}],"packages":[{"readings":[{"reported":"<5","source":{"file":"inbox/a.csv","sha256":"01","row":2,"column":"C"}}],"other_series":{"readings":[]}}]}"#;
    let excerpt = "a.excerpt.csv\nfile,file_sha256,row,column,reported\ninbox/a.csv,01,2,C,<5\n";
    let words = "TKW-P1-1.json\n{\"content\":{\"verdict\":\"within_limit\"}}";
    write(
        "attachments",
        "case",
        &[case, excerpt, words].map(str::as_bytes).join(BETWEEN),
    );
}
