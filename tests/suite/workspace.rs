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

    /// Runs the program and looks meanwhile at what it takes.
    #[cfg(target_os = "linux")]
    pub fn measured(&self, arguments: &[&str]) -> Taken {
        use std::process::Stdio;
        let mut program = Command::new(env!("CARGO_BIN_EXE_galleyproof"))
            .args(arguments)
            .current_dir(self.folder.path())
            .env_remove("SOURCE_DATE_EPOCH")
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .expect("the program starts");
        let mut taken = Taken::default();
        while program.try_wait().expect("is ours").is_none() {
            taken.look(program.id());
            std::thread::sleep(std::time::Duration::from_millis(20));
        }
        taken
    }

    /// `check --format json`, as data.
    pub fn results(&self) -> serde_json::Value {
        let run = self.run(&["check", "--format", "json"]);
        serde_json::from_slice(&run.output.stdout)
            .unwrap_or_else(|error| panic!("{error}: {}", run.stderr()))
    }
}

/// What a run of the program took, as far as its end was seen.
#[cfg(target_os = "linux")]
#[derive(Clone, Copy, Debug, Default)]
pub struct Taken {
    /// The most memory that it held.
    pub megabytes: u64,
    /// Time on a processor, its own and that of the system for it.
    pub cpu_seconds: u64,
}

#[cfg(target_os = "linux")]
impl Taken {
    fn look(&mut self, process: u32) {
        const TICKS_A_SECOND: u64 = 100;
        let read = |name: &str| fs::read_to_string(format!("/proc/{process}/{name}")).ok();
        let peak = read("status").and_then(|status| {
            let line = status
                .lines()
                .find(|line| line.starts_with("VmHWM:"))?
                .to_owned();
            line.split_whitespace().nth(1)?.parse::<u64>().ok()
        });
        // After the name, which stands in brackets, user time is the 12th field and system time the 13th.
        let ticks = read("stat").and_then(|stat| {
            let fields: Vec<&str> = stat.rsplit_once(')')?.1.split_whitespace().collect();
            Some(fields.get(11)?.parse::<u64>().ok()? + fields.get(12)?.parse::<u64>().ok()?)
        });
        self.megabytes = self.megabytes.max(peak.unwrap_or(0) / 1024);
        self.cpu_seconds = self.cpu_seconds.max(ticks.unwrap_or(0) / TICKS_A_SECOND);
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
