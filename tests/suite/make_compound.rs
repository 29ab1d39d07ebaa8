//! Makes a compound file ([MS-CFB]) of one stream: what an .xls stands in.

/// Bytes one after another.
macro_rules! bytes {
    ($($part:expr),* $(,)?) => {{
        let mut all: Vec<u8> = Vec::new();
        $(all.extend_from_slice($part.as_ref());)*
        all
    }};
}

pub(crate) use bytes;

/// A compound file with one stream.
pub fn compound(name: &str, stream: &[u8]) -> Vec<u8> {
    const END: u32 = 0xffff_fffe;
    // The header names the sectors of tables, no more than 109: a long stream needs longer sectors.
    let (sector, version, shift) = if stream.len() < 6_000_000 {
        (512, 3, 9)
    } else {
        (4096, 4, 12)
    };
    // Shorter streams would stand elsewhere.
    let length = stream.len().max(4096);
    let sectors = length.div_ceil(sector);
    let tables = (1..)
        .find(|n| n * sector / 4 > sectors + n)
        .expect("is found");
    let mut next: Vec<u32> = (1..=sectors as u32).collect();
    next[sectors - 1] = END;
    next.push(END);
    next.extend(std::iter::repeat_n(0xffff_fffd_u32, tables));
    next.resize(tables * sector / 4, 0xffff_ffff);
    let entry = |name: &str, kind: u8, child: u32, start: u32, length: usize| {
        let mut letters = name
            .encode_utf16()
            .flat_map(u16::to_le_bytes)
            .collect::<Vec<u8>>();
        letters.resize(64, 0);
        bytes![
            letters,
            ((name.len() as u16 + 1) * 2).to_le_bytes(),
            [kind, 1],
            [0xff; 8],
            child.to_le_bytes(),
            [0; 36],
            start.to_le_bytes(),
            (length as u64).to_le_bytes(),
        ]
    };
    let mut first: Vec<u8> = (0..tables)
        .flat_map(|n| ((sectors + 1 + n) as u32).to_le_bytes())
        .collect();
    first.resize(436, 0xff);
    let mut out = bytes![
        [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1],
        [0; 16],
        [0x3e, 0, version, 0, 0xfe, 0xff, shift, 0, 6, 0],
        [0; 10],
        (tables as u32).to_le_bytes(),
        (sectors as u32).to_le_bytes(),
        [0; 4],
        4096_u32.to_le_bytes(),
        END.to_le_bytes(),
        [0; 4],
        END.to_le_bytes(),
        [0; 4],
        first,
    ];
    out.resize(sector, 0);
    out.extend_from_slice(stream);
    out.resize(sector * (sectors + 1), 0);
    out.extend(entry("Root Entry", 5, 1, END, 0));
    out.extend(entry(name, 2, u32::MAX, 0, length));
    out.resize(sector * (sectors + 2), 0);
    out.extend(next.iter().flat_map(|number| number.to_le_bytes()));
    out
}
