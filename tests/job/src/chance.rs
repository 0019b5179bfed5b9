//! Taps by chance: all that a screen shows, and one of it by a number.

use screens::{Action, Place, Screen};
use serde_json::Value;

/// Every action that a screen offers with a button or a row, in the order in which it is shown.
///
/// The state is read as any shell reads it, as JSON, so that no button of a screen can be forgotten here.
pub fn offered(screen: &Screen) -> Vec<Action> {
    let mut found = Vec::new();
    collect(
        &serde_json::to_value(screen).expect("a state is JSON"),
        &mut found,
    );
    found
}

fn collect(value: &Value, found: &mut Vec<Action>) {
    match value {
        Value::Object(members) => {
            for (name, member) in members {
                if name == "action" || name == "go" {
                    found.extend(serde_json::from_value::<Action>(member.clone()).ok());
                } else {
                    collect(member, found);
                }
            }
        }
        Value::Array(all) => all.iter().for_each(|one| collect(one, found)),
        _ => {}
    }
}

/// Whether a tap records something about the visit that an undo can take back.
pub fn records(action: &Action) -> bool {
    !matches!(
        action,
        Action::Go { .. }
            | Action::Submit { .. }
            | Action::Draft { .. }
            | Action::Undo { .. }
            | Action::Close { .. }
            | Action::WriteLetter { .. }
            | Action::ReminderDone { .. }
    )
}

/// Whether a tap leads on within an open visit.
pub fn stays_on_visit(action: &Action) -> bool {
    match action {
        Action::Go { to } => matches!(
            to,
            Place::Walk { .. } | Place::Mark { .. } | Place::Safety { .. } | Place::Tray { .. }
        ),
        action => records(action),
    }
}
