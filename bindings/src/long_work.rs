//! Work that takes a while: a phone asks again and again how far it is, and may give it up.

use crate::block::{Next, Tap};
use crate::cross::Cross;
use crate::{Book, Trouble};
use acts::Moment;
use screens::{Action, Screens};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex, PoisonError};
use std::thread;

/// How far it is.
#[derive(Clone, Debug, uniffi::Enum)]
pub enum HowFar {
    /// Still at it.
    Going {
        /// Steps done.
        done: u32,
        /// Steps in all.
        of: u32,
        /// What it does now.
        says: String,
    },
    /// Carried out.
    Done {
        /// Where it leads.
        next: Next,
    },
    /// Given up: nothing of it is kept.
    GivenUp,
}

/// Work that takes a while.
#[derive(uniffi::Object)]
pub struct LongWork {
    how_far: Mutex<Result<HowFar, Trouble>>,
    given_up: AtomicBool,
}

/// Drawing, then keeping.
const STEPS: u32 = 2;

#[uniffi::export]
impl LongWork {
    /// How far it is.
    ///
    /// # Errors
    /// Why it was not carried out; nothing is half done.
    pub fn how_far(&self) -> Result<HowFar, Trouble> {
        self.how_far
            .lock()
            .unwrap_or_else(PoisonError::into_inner)
            .clone()
    }

    /// Gives it up. It ends before its next step; where the last one has begun it is carried out.
    ///
    /// # Errors
    /// Never: every call answers with a result.
    pub fn give_up(&self) -> Result<(), Trouble> {
        self.given_up.store(true, Ordering::Relaxed);
        Ok(())
    }
}

impl LongWork {
    pub(crate) fn begin(book: Arc<Book>, tap: Arc<Tap>, now: Moment) -> Arc<Self> {
        let work = Arc::new(Self {
            how_far: Mutex::new(Ok(HowFar::Going {
                done: 0,
                of: STEPS,
                says: String::new(),
            })),
            given_up: AtomicBool::new(false),
        });
        let worker = Arc::clone(&work);
        thread::spawn(move || {
            let end = book.with(|screens| worker.carry_out(screens, &tap.0, now));
            worker.tell(end);
        });
        work
    }

    fn carry_out(
        &self,
        screens: &mut Screens,
        action: &Action,
        now: Moment,
    ) -> Result<HowFar, Trouble> {
        let Action::WriteLetter { visit, language } = action else {
            let next = screens.act(action, now)?.cross();
            return Ok(HowFar::Done { next });
        };
        self.step(screens, 0, "phone-letter-draw")?;
        let drawn = screens.draw_letter(*visit, *language, now)?;
        if self.given_up.load(Ordering::Relaxed) {
            return Ok(HowFar::GivenUp);
        }
        self.step(screens, 1, "phone-letter-keep")?;
        let next = screens.keep_letter(drawn, now)?.cross();
        Ok(HowFar::Done { next })
    }

    fn step(&self, screens: &Screens, done: u32, key: &str) -> Result<(), Trouble> {
        self.tell(Ok(HowFar::Going {
            done,
            of: STEPS,
            says: screens.words()?.text(key),
        }));
        Ok(())
    }

    fn tell(&self, how_far: Result<HowFar, Trouble>) {
        *self.how_far.lock().unwrap_or_else(PoisonError::into_inner) = how_far;
    }
}
