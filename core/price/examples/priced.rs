//! Shows what this room answers: a question as JSON on standard input, the answer as JSON on standard output.
//!
//! `priced worth` takes rows of price, rate, years and months; `priced offer` takes a measured and laid roof, a price list as CSV, a verdict and the
//! record it stands on, and answers with takeoff, tear-off and offer.

use jiff::civil::Date;
use price::{Asking, Basis, Choices, Reading, Standing, Supplies, Weights, worth};
use rust_decimal::Decimal;
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use std::error::Error;
use std::io::{Read, stdin, stdout};
use trade::catalogue::Catalogue;
use trade::firm::Profile;
use trade::history::History;
use trade::ids::OfferId;
use trade::laid::Laid;
use trade::mark::Mark;
use trade::offer::Offer;
use trade::price_list::Share;
use trade::property::{Part, Property, Slope};
use trade::roof::RoofPlan;
use trade::takeoff::{Takeoff, TearOff};
use trade::units::Money;
use trade::verdict::Verdict;

/// A sum of money through time.
#[derive(Deserialize)]
struct Sum {
    price: Money,
    rate: Share,
    years: u32,
    months: u32,
    holds: u16,
}

/// What it is worth in each way.
#[derive(Serialize)]
struct Worth {
    a_year: Decimal,
    annuity: Decimal,
    now: Decimal,
    patching: (Decimal, Decimal),
}

/// A roof to be offered for.
#[derive(Deserialize)]
struct Job {
    plan: RoofPlan,
    laid: Laid,
    profile: Profile,
    choices: Choices,
    standing: Standing,
    readings: Vec<Reading>,
    list: String,
    verdict: Verdict,
    property: Property,
    slopes: Vec<Slope>,
    parts: Vec<Part>,
    marks: Vec<Mark>,
    id: OfferId,
    on: Date,
}

/// What it takes and costs.
#[derive(Serialize)]
struct Answer {
    takeoff: Takeoff,
    tear_off: TearOff,
    offer: Offer,
}

fn main() -> Result<(), Box<dyn Error>> {
    match std::env::args().nth(1).as_deref() {
        Some("worth") => answer(
            &asked::<Vec<Sum>>()?
                .iter()
                .map(worths)
                .collect::<Result<Vec<_>, _>>()?,
        ),
        Some("offer") => answer(
            &asked::<Vec<Job>>()?
                .iter()
                .map(offered)
                .collect::<Result<Vec<_>, _>>()?,
        ),
        _ => Err("say `worth` or `offer`".into()),
    }
}

fn asked<T: DeserializeOwned>() -> Result<T, Box<dyn Error>> {
    let mut text = String::new();
    stdin().read_to_string(&mut text)?;
    Ok(serde_json::from_str(&text)?)
}

fn answer<T: Serialize>(answer: &T) -> Result<(), Box<dyn Error>> {
    Ok(serde_json::to_writer(stdout(), answer)?)
}

fn worths(sum: &Sum) -> Result<Worth, worth::WorthError> {
    Ok(Worth {
        a_year: worth::a_year(sum.price, sum.rate, sum.years)?,
        annuity: worth::annuity(sum.price, sum.rate, sum.years)?,
        now: worth::worth_now(sum.price, sum.rate, sum.months)?,
        patching: worth::patching(sum.price, sum.holds, sum.years, sum.rate)?,
    })
}

fn offered(job: &Job) -> Result<Answer, Box<dyn Error>> {
    let list = price::read_list(job.list.as_bytes())?;
    let supplies = Supplies::of(&list);
    let basis = Basis {
        profile: &job.profile,
        supplies: &supplies,
        standing: &job.standing,
        choices: &job.choices,
    };
    let takeoff = price::takeoff(&job.plan, &job.laid, &basis)?;
    let planes: Vec<usize> = (0..job.plan.planes.len()).collect();
    let trailer = list.disposal.trailer.ok_or("the list has no trailer")?;
    let tear_off = price::tear_off(
        &job.plan,
        &planes,
        &job.readings,
        &Weights::default(),
        &trailer,
    )?;
    let mut history = History::of(job.property.clone());
    history.slopes.clone_from(&job.slopes);
    history.parts.clone_from(&job.parts);
    history.marks.clone_from(&job.marks);
    let asking = Asking {
        verdict: &job.verdict,
        history: &history,
        catalogue: Catalogue::standard(),
        list: &list,
        takeoff: Some(&takeoff),
        tear_off: Some(&tear_off),
        counts: &[],
        wanted: &[],
        patch: None,
        repair_lasts: None,
    };
    let offer = price::offers(job.id, job.on, &asking)?;
    Ok(Answer {
        takeoff,
        tear_off,
        offer,
    })
}
