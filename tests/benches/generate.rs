//! Writes a generated programme folder: `cargo bench --bench generate -- FOLDER PRODUCTS`.

mod generated;

fn main() {
    let mut arguments = std::env::args()
        .skip(1)
        .filter(|argument| !argument.starts_with("--"));
    let (Some(folder), Some(products)) = (arguments.next(), arguments.next()) else {
        return;
    };
    let products = products
        .parse()
        .expect("the second argument is a number of products");
    generated::programme(folder.as_ref(), products);
}
