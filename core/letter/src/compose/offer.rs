//! What is offered: each course with its price, what it includes, leaves out and leaves unsolved. What it costs the firm, and what the firm
//! adds, is its own.

use super::pricing::{narrowed, patched_again};
use super::writer::Writer;
use super::{first_page, grounds, paragraph, quantities};
use crate::content::{Block, InShort, Line, Offered, Told};
use crate::plain::Plain;
use trade::ids::StructureId;
use trade::offer::{Offer, PricedCourse, Unsolved};
use trade::verdict::Narrowed;
use trade::words::Said;

/// Every offer, the courses of each in order of time.
pub fn blocks(writer: &Writer) -> Vec<Block> {
    let mut blocks = Vec::new();
    for offer in writer.recorded() {
        let of_one = if offer.valid_until < writer.material.on {
            vec![paragraph(writer.say(&ran_out(offer)))]
        } else {
            told(writer, offer)
        };
        if of_one.is_empty() {
            continue;
        }
        if writer.has_many_structures() {
            blocks.push(Block::Heading {
                says: writer.say(&writer.structure(offer.structure)),
            });
        }
        blocks.extend(of_one);
    }
    blocks
}

fn ran_out(offer: &Offer) -> Said {
    Said::new("letter-offer-ran-out")
        .with("on", offer.on)
        .with("until", offer.valid_until)
}

fn told<'a>(writer: &Writer<'a>, offer: &'a Offer) -> Vec<Block> {
    let courses: Vec<&PricedCourse> = writer
        .courses(offer)
        .filter(|course| says_something(course))
        .collect();
    if courses.is_empty() {
        return Vec::new();
    }
    let shared = Shared::of(&courses);
    let each = courses
        .iter()
        .map(|course| Block::Offered(offered(writer, offer, course, &shared)));
    std::iter::once(paragraph(writer.say(&offer.says_until())))
        .chain(each)
        .chain(shared.says(writer).into_iter().map(paragraph))
        .collect()
}

/// What every course of an offer but the one that solves it leaves unsolved, or every one: it is said once, behind them.
struct Shared<'a>(Vec<(&'a Unsolved, Option<&'a PricedCourse>)>);

impl<'a> Shared<'a> {
    fn of(courses: &[&'a PricedCourse]) -> Self {
        let mut shared = Self(Vec::new());
        for unsolved in courses.iter().flat_map(|course| &course.unsolved) {
            let solves = |course: &&&'a PricedCourse| !course.unsolved.contains(unsolved);
            let solving: Vec<_> = courses.iter().filter(solves).collect();
            let is_shared = solving.len() == usize::from(unsolved.by.is_some());
            if courses.len() > 2 && is_shared && !shared.holds(unsolved) {
                shared
                    .0
                    .push((unsolved, solving.first().map(|course| **course)));
            }
        }
        shared
    }

    fn holds(&self, unsolved: &Unsolved) -> bool {
        self.0.iter().any(|(held, _)| *held == unsolved)
    }

    /// One sentence for each course that puts something right, and one for what none does.
    fn says(&self, writer: &Writer) -> Vec<Plain> {
        let mut by: Vec<(Option<Plain>, Vec<Said>)> = Vec::new();
        for (unsolved, solving) in &self.0 {
            let course = solving.map(|course| heading(writer, course));
            let part = writer.named_in_offer(unsolved.part);
            match by.iter_mut().find(|(known, _)| *known == course) {
                Some((_, parts)) => parts.push(part),
                None => by.push((course, vec![part])),
            }
        }
        by.into_iter()
            .map(|(course, parts)| {
                let says = match course {
                    Some(course) => {
                        Said::new("letter-put-right-only-by").with("course", course.to_string())
                    }
                    None => Said::new("letter-put-right-by-none"),
                };
                writer.say(&says.with("parts", parts))
            })
            .collect()
    }
}

/// Leaving a roof alone, or looking at it again, has nothing to offer.
fn says_something(course: &PricedCourse) -> bool {
    course.sums.is_some() || !course.unpriced.is_empty() || !course.leaves_out.is_empty()
}

fn offered(writer: &Writer, offer: &Offer, course: &PricedCourse, shared: &Shared<'_>) -> Offered {
    let named = |part| writer.named_in_offer(part);
    let mut unpriced: Vec<Plain> = Vec::new();
    for what in &course.unpriced {
        let says = writer.say(&what.says_to_owner(&named));
        // What the roofer misses at two pitches is one thing to the owner.
        if !unpriced.contains(&says) {
            unpriced.push(says);
        }
    }
    if course.sums.is_none() && unpriced.is_empty() {
        unpriced.push(writer.text("letter-not-ours-to-price"));
    }
    let against = course.nevertheless.iter();
    Offered {
        course: heading(writer, course),
        price: course
            .price()
            .map(|price| writer.say(&price.says(&offer.currency))),
        unpriced,
        beside: course
            .says_beside(&offer.currency)
            .iter()
            .map(|said| writer.say(said))
            .collect(),
        against: writer.reasons(against.flat_map(|nevertheless| &nevertheless.against)),
        told: groups(writer, offer, course, shared),
    }
}

/// "This season: repair", or "Against our advice, this season: a repair with sealant alone".
fn heading(writer: &Writer, course: &PricedCourse) -> Plain {
    let says = Said::new("letter-why-step")
        .with("when", when(writer, course, None))
        .with("course", writer.small(&name(course)));
    writer.say(&says)
}

/// The name of what is offered.
fn name(course: &PricedCourse) -> Said {
    grounds::course_narrowed(course.course, narrowed(course))
}

/// When, on which structure where that must be said, and that it is against advice where it is.
fn when(writer: &Writer, course: &PricedCourse, structure: Option<StructureId>) -> Said {
    let when = match &course.nevertheless {
        Some(_) => Said::new("letter-against-advice")
            .with("when", writer.small(&Said::new(course.when.key()))),
        None => Said::new(course.when.key()),
    };
    first_page::when_and_where(writer, structure, when)
}

fn groups(writer: &Writer, offer: &Offer, course: &PricedCourse, shared: &Shared<'_>) -> Vec<Told> {
    let named = |part| writer.named_in_offer(part);
    let say = |said: Said| writer.say(&said);
    let left_out = course
        .leaves_out
        .iter()
        .map(|what| what.says(&named, &offer.currency));
    let unsolved = course
        .unsolved
        .iter()
        .filter(|what| !shared.holds(what))
        .map(|what| what.says(&named));
    let all = [
        ("letter-includes", includes(writer, offer, course)),
        ("letter-leaves", left_out.chain(unsolved).map(say).collect()),
        ("letter-over-years", over_years(writer, offer, course)),
    ];
    all.into_iter()
        .filter(|(_, lines): &(_, Vec<Plain>)| !lines.is_empty())
        .map(|(lead, lines)| Told {
            lead: writer.text(lead),
            lines,
        })
        .collect()
}

/// What is done, part by part; for a new covering its material and what comes down.
fn includes(writer: &Writer, offer: &Offer, course: &PricedCourse) -> Vec<Plain> {
    let mut lines = Vec::new();
    let is_whole = narrowed(course) == Narrowed::Whole;
    if is_whole && (course.sums.is_some() || !course.unpriced.is_empty()) {
        lines.push(writer.text(&format!("{}.what", course.course.key())));
    }
    lines.extend(
        first_page::work(writer, &course.includes)
            .iter()
            .map(|work| writer.sentence(&Said::new("letter-work-lead").with("work", work.clone()))),
    );
    if !course.needs.is_empty() {
        lines.extend(material(writer, offer, course));
    }
    if let Some(tear_off) = &course.tear_off {
        lines.push(writer.say(&quantities::comes_down(tear_off)));
    }
    lines
}

/// The material: by the list that the letter shows, or else thing by thing.
fn material(writer: &Writer, offer: &Offer, course: &PricedCourse) -> Vec<Plain> {
    let mut roofs = writer.material.roofs.iter();
    let is_listed = roofs.any(|roofed| {
        roofed.structure == offer.structure
            && roofed
                .takeoff
                .is_some_and(|takeoff| takeoff.needs == course.needs)
    });
    if is_listed {
        let heading = writer.text("letter-takes").to_string();
        return vec![writer.say(&Said::new("letter-includes-material").with("heading", heading))];
    }
    let each = course.needs.iter().map(|need| {
        Said::new("letter-includes-need")
            .with("item", need.name())
            .with("order", need.says_order())
    });
    each.map(|said| writer.sentence(&said)).collect()
}

fn over_years(writer: &Writer, offer: &Offer, course: &PricedCourse) -> Vec<Plain> {
    let yearly = course
        .yearly
        .iter()
        .map(|yearly| yearly.says(&offer.currency));
    let again = patched_again(course).map(|again| {
        Said::new("letter-patching")
            .with("remedy", Said::new(again.remedy.message()))
            .with("part", writer.named_in_offer(again.part))
            .with("says", again.says(&offer.currency))
    });
    yearly.chain(again).map(|said| writer.say(&said)).collect()
}

/// A box for each course that is offered against advice.
pub fn against_advice(writer: &Writer) -> Vec<Line> {
    let offers = writer.offers();
    let courses = offers.flat_map(|offer| writer.courses(offer).map(move |course| (offer, course)));
    courses
        .filter(|(_, course)| course.nevertheless.is_some())
        .map(|(offer, course)| Line {
            lead: Some(writer.say(&when(writer, course, Some(offer.structure)))),
            says: writer.say(&in_words(writer, course)),
            price: writer.price_until(offer, course),
        })
        .collect()
}

fn in_words(writer: &Writer, course: &PricedCourse) -> Said {
    let work = first_page::work(writer, &course.includes);
    if work.is_empty() {
        return Said::new("letter-work-lead").with("work", name(course));
    }
    Said::new("letter-step-with-work")
        .with("course", name(course))
        .with("work", Said::new("letter-list").with("each", work))
}

/// What each offer holds at what price until when, for the short text.
pub fn in_short(writer: &Writer) -> Vec<InShort> {
    let shorts = writer.offers().map(|offer| {
        let until = Said::new("letter-short-offer").with("date", offer.valid_until);
        let mut courses: Vec<&PricedCourse> = writer.courses(offer).collect();
        courses.sort_by_key(|course| course.nevertheless.is_some());
        let priced = courses.into_iter().filter_map(|course| {
            let key = match course.nevertheless {
                Some(_) => "letter-course-against",
                None => "letter-course-for",
            };
            let says = Said::new(key)
                .with("course", writer.small(&name(course)))
                .with("price", course.price()?.says(&offer.currency));
            Some(writer.say(&writer.on_structure(offer.structure, says)))
        });
        InShort {
            until: writer.say(&until),
            courses: priced.collect(),
        }
    });
    shorts.filter(|short| !short.courses.is_empty()).collect()
}
