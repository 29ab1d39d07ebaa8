//! A programme folder for a test, and the program run in it.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

/// A programme folder that goes away with the test.
pub struct Workspace {
    folder: tempfile::TempDir,
}

impl Workspace {
    /// The least that is a programme: settings, one product `P1`, and packages `A1`, `A2`, `A3`.
    pub fn new() -> Workspace {
        let workspace = Workspace {
            folder: tempfile::tempdir().expect("a folder"),
        };
        workspace.with(
            "programme.toml",
            "[programme]\nname = \"Tidewater Kitchen Works\"\nshort_name = \"TKW\"\n",
        );
        workspace.with(
            "registers/products.csv",
            "product_id,name,claim,ingredients\nP1,Harbour Loaf,gluten-free,\"Water, rice flour, salt.\"\n",
        );
        workspace.with(
            "registers/packages.csv",
            "package_code,product_id\nA1,P1\nA2,P1\nA3,P1\n",
        );
        fs::create_dir_all(workspace.path("inbox")).expect("makes the inbox");
        workspace
    }

    /// The demo programme.
    pub fn demo() -> Workspace {
        let workspace = Workspace {
            folder: tempfile::tempdir().expect("a folder"),
        };
        let examples = Path::new(env!("CARGO_MANIFEST_DIR")).join("examples");
        for part in ["programme.toml", "registers", "inbox", "photographs"] {
            for entry in walkdir::WalkDir::new(examples.join(part)) {
                let path = entry.expect("can be listed").into_path();
                let below = path
                    .strip_prefix(&examples)
                    .expect("is below")
                    .to_string_lossy()
                    .into_owned();
                if path.is_file() {
                    workspace.with(&below, fs::read(&path).expect("can be read"));
                }
            }
        }
        workspace
    }

    /// Adds or replaces a file.
    pub fn with(&self, path: &str, content: impl AsRef<[u8]>) -> &Workspace {
        let path = self.path(path);
        fs::create_dir_all(path.parent().expect("is in a folder")).expect("makes the folder");
        fs::write(path, content).expect("writes");
        self
    }

    /// A path in the folder.
    pub fn path(&self, path: &str) -> PathBuf {
        self.folder.path().join(path)
    }

    /// The text of a file in the folder.
    pub fn text(&self, path: &str) -> String {
        fs::read_to_string(self.path(path)).unwrap_or_else(|error| panic!("{path}: {error}"))
    }

    /// Runs the program in the folder.
    pub fn run(&self, arguments: &[&str]) -> Run {
        self.run_with(arguments, &[])
    }

    /// Runs the program in the folder with these variables set.
    pub fn run_with(&self, arguments: &[&str], variables: &[(&str, &str)]) -> Run {
        let output = Command::new(env!("CARGO_BIN_EXE_galleyproof"))
            .args(arguments)
            .current_dir(self.folder.path())
            .env_remove("SOURCE_DATE_EPOCH")
            .envs(variables.iter().copied())
            .output()
            .expect("the program starts");
        Run { output }
    }

    /// `check --format json`, as data.
    pub fn results(&self) -> serde_json::Value {
        let run = self.run(&["check", "--format", "json"]);
        serde_json::from_slice(&run.output.stdout)
            .unwrap_or_else(|error| panic!("{error}: {}", run.stderr()))
    }
}

/// How a run of the program came out.
pub struct Run {
    output: Output,
}

impl Run {
    /// Holds the exit status against what is expected.
    pub fn exits(&self, status: i32) -> &Run {
        assert_eq!(
            self.output.status.code(),
            Some(status),
            "stdout: {}\nstderr: {}",
            self.stdout(),
            self.stderr()
        );
        self
    }

    /// What it wrote on standard output.
    pub fn stdout(&self) -> String {
        String::from_utf8_lossy(&self.output.stdout).into_owned()
    }

    /// What it wrote on standard error.
    pub fn stderr(&self) -> String {
        String::from_utf8_lossy(&self.output.stderr).into_owned()
    }
}

/// Every file below a folder with its bytes, by path.
pub fn tree(folder: &Path) -> Vec<(String, Vec<u8>)> {
    walkdir::WalkDir::new(folder)
        .sort_by_file_name()
        .into_iter()
        .map(|entry| entry.expect("can be listed").into_path())
        .filter(|path| path.is_file())
        .map(|path| {
            let below = path
                .strip_prefix(folder)
                .expect("is below")
                .to_string_lossy()
                .into_owned();
            (below, fs::read(&path).expect("can be read"))
        })
        .collect()
}
