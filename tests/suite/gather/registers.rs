//! Registers: every fault is named at once, by row and column.

use super::folder::Folder;

#[test]
fn faults_are_named_by_row_and_column_all_at_once() {
    let read = Folder::new()
        .with(
            "registers/products.csv",
            b"product_id,name,claim,oats\noat-bar,Oat bar,gluten-free,wild\nCON,Crisps,gluten-free,\nrice,,gluten-free,\nOat-Bar,Other,gluten-free,\n",
        )
        .with(
            "registers/packages.csv",
            b"package_code,product_id,sent_on\nTKW-101,oat-bar,03/07/2031\ntkw-101,oat-bar,\nTKW 102,oat-bar,\nTKW-103,nowhere,\n",
        )
        .with("registers/corrections.csv", b"file,package_code,action,reason,by,on\nmarch.csv,TKW-101,exclude,spilt,E. Quill,2031-03-07\n")
        .gather();
    assert_eq!(
        read.problems(),
        [
            "register_error registers/corrections.csv A2",
            "register_error registers/packages.csv C2",
            "register_error registers/packages.csv A3",
            "register_error registers/packages.csv A4",
            "register_error registers/packages.csv B5",
            "register_error registers/products.csv D2",
            "register_error registers/products.csv A3",
            "register_error registers/products.csv B4",
            "register_error registers/products.csv A5",
        ]
    );
    let codes: Vec<&str> = read
        .gathered
        .registers
        .packages
        .iter()
        .map(|package| package.package_code.as_str())
        .collect();
    assert_eq!(codes, ["TKW-101"]);
}

#[test]
fn two_files_of_one_register_are_refused() {
    let refused = Folder::new().with("registers/products.ods", b"").refused();
    assert!(refused.contains("two registers of products"), "{refused}");
}
