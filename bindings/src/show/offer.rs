//! Offer: what each course of the verdict costs, in order of time, and what it takes.

use crate::block::{Button, Form, Row};
use crate::cross::{Cross, mirror};

mirror! {
    /// One priced course.
    CourseBlock of screens::CourseBlock {
        /// When.
        when: String,
        /// What.
        what: String,
        /// By when.
        until: Option<String>,
        /// What the owner pays; `None` where something has no price yet.
        price: Option<String>,
        /// What is said beside the price: tax, the smallest charge, what it costs a year, what patching again would cost.
        beside: Vec<String>,
        /// What has no price yet.
        unpriced: Vec<String>,
        /// Over what is included.
        includes_title: String,
        /// What is included.
        includes: Vec<String>,
        /// Over what is left out and not put right.
        leaves_title: String,
        /// What is left out and what is not put right.
        leaves: Vec<String>,
        /// Over how the price is made. It is for the roofer: the owner's letter does not show it.
        made_title: String,
        /// Lines of cost and the sums under them, each with its amount.
        made: Vec<Sum>,
    }

    /// The state of Offer.
    OfferState of screens::Offer {
        /// The address and the structure.
        under: String,
        /// The heading.
        title: String,
        /// Whether it was put to the owner, and until when it holds.
        put: String,
        /// What stands in the way of a price.
        trouble: Option<String>,
        /// The courses, soonest first.
        courses: Vec<CourseBlock>,
        /// Courses that judgement refuses: offered only with a reason.
        nevertheless: Vec<Form>,
        /// What is counted and chosen for it, where anything is to be.
        worksheet: Option<Form>,
        /// Over what it takes.
        takes_title: String,
        /// What a new covering takes: what, how much, what is ordered.
        takes: Vec<Row>,
        /// Over what comes down and what the roof carries.
        weighs_title: String,
        /// What comes down, what the roof carries.
        weighs: Vec<String>,
        /// The roof's plan.
        roof: Button,
        /// Back to the verdict.
        back: Button,
        /// Putting it to the owner.
        main: Option<Button>,
    }
}

/// A line of cost, or a sum.
#[derive(Clone, Debug, uniffi::Record)]
pub struct Sum {
    /// What.
    pub says: String,
    /// How much.
    pub amount: String,
}

impl Cross<Sum> for (String, String) {
    fn cross(self) -> Sum {
        let (says, amount) = self;
        Sum { says, amount }
    }
}
