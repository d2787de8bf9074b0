//! A folder that nobody may write to, met by a user for whom permissions hold.
//!
//! Alone in its file: to start a program as another user this process is forked, and until the child runs that program it holds
//! every lock of this one, so that a test beside it could not open again what it had just closed.

use slowbend_tests::{kit, sim::place};
use std::{
    fs, io,
    os::unix::{fs::PermissionsExt, process::CommandExt},
    path::Path,
    process::Command,
};

fn permit(path: &Path, mode: u32) -> io::Result<()> {
    fs::set_permissions(path, fs::Permissions::from_mode(mode))
}

fn permit_files(folder: &Path, mode: u32) -> io::Result<()> {
    for file in fs::read_dir(folder)? {
        permit(&file?.path(), mode)?;
    }
    Ok(())
}

/// As another user than root, who may write anywhere.
#[test]
fn a_read_only_folder_is_said() {
    let root = place::fresh();
    let folder = root.path().join("pit");
    let mut door = kit::open(&folder, "phone", &kit::six());
    kit::lunch(&mut door, &kit::six());
    let all = kit::entries(&mut door);
    drop(door);
    permit(root.path(), 0o755).unwrap();
    permit_files(&folder, 0o444).unwrap();
    permit(&folder, 0o555).unwrap();
    let mut child = Command::new(env!("CARGO_BIN_EXE_acknowledger"));
    child.arg(&folder).arg("1");
    if fs::write(folder.join("probe"), "").is_ok() {
        fs::remove_file(folder.join("probe")).unwrap();
        child.uid(65_534).gid(65_534);
    }
    let Ok(output) = child.output() else {
        println!(
            "skipped: a_read_only_folder_is_said: no other user can run the test's program here"
        );
        return;
    };
    let said = String::from_utf8_lossy(&output.stderr);
    assert!(
        said.contains("CannotWrite") && said.contains("change its permissions"),
        "{said}"
    );
    assert!(output.stdout.is_empty());
    permit(&folder, 0o755).unwrap();
    permit_files(&folder, 0o644).unwrap();
    let mut door = kit::open(&folder, "phone", &kit::six());
    assert_eq!(kit::entries(&mut door), all);
}
