//! Roof: the plan as it was measured, its numbers, its parts, and measuring it.

use crate::block::{Button, Form, Row};
use crate::cross::{Cross, mirror};
use crate::drawing::Drawing;

mirror! {
    /// A drawing with what it shows, for those who do not see it.
    Drawn of screens::Drawn {
        /// The drawing.
        drawing: Drawing,
        /// What it is.
        title: String,
        /// What it shows.
        says: String,
    }

    /// One edge of the outline, folded behind its name: what stands there, and its own pitch and overhang.
    EdgeRow of screens::EdgeRow {
        /// Which edge, its length, and what stands there.
        name: String,
        /// To say what stands there.
        is: Vec<Button>,
        /// Its own pitch and overhang.
        form: Form,
    }

    /// A covering laid on the roof.
    LaidRoof of screens::LaidRoof {
        /// What it is: it is folded away until asked for.
        title: String,
        /// Every piece as it lies.
        drawn: Drawn,
        /// Pieces, bundles and waste, and what books say.
        numbers: Vec<Row>,
    }

    /// The state of Roof.
    RoofState of screens::Roof {
        /// The address and the structure.
        under: String,
        /// The heading.
        title: String,
        /// The structures that stand.
        structures: Vec<Button>,
        /// The plan, where it was measured.
        plan: Option<Drawn>,
        /// What to say where nobody measured it yet.
        none: Option<String>,
        /// Area, height, how exact it is.
        numbers: Vec<Row>,
        /// Over the planes.
        planes_title: String,
        /// Each plane: its letter, pitch and area.
        planes: Vec<Row>,
        /// The planes that are of no slope of the walk yet, where there are some.
        untied: Option<String>,
        /// Over the lines.
        lines_title: String,
        /// Each kind of line and its length.
        lines: Vec<Row>,
        /// Over the edges.
        edges_title: String,
        /// The edges of the outline, where it was drawn by its corners.
        edges: Vec<EdgeRow>,
        /// Over what stands on the roof.
        standing_title: String,
        /// Each dormer; a tap takes it off.
        standing: Vec<Button>,
        /// Over the pitches that were measured.
        pitches_title: String,
        /// Each slope whose pitch was measured, how, and how exactly.
        pitches: Vec<Row>,
        /// The shingles as they lie, where the roof was measured and they can be laid.
        laid: Option<LaidRoof>,
        /// Over the ways to measure.
        measure_title: String,
        /// The ways to measure, the pitch of a slope, the place of a part.
        forms: Vec<Form>,
        /// Where water comes in.
        leak: Button,
        /// The structure, for the names of the plan's files.
        structure: String,
        /// Over the files.
        files_title: String,
        /// Files of the plan, each with what it is called.
        files: Vec<PlanFileRow>,
        /// The way back.
        back: Button,
    }
}

/// A file of a plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, uniffi::Enum)]
pub enum PlanFile {
    /// The plan as a picture.
    Svg,
    /// The plan for a drawing program.
    Dxf,
    /// Planes and lines for a map.
    Geojson,
    /// Planes as a table.
    PlanesCsv,
    /// Lines as a table.
    LinesCsv,
}

impl Cross<PlanFile> for screens::PlanFile {
    fn cross(self) -> PlanFile {
        match self {
            Self::Svg => PlanFile::Svg,
            Self::Dxf => PlanFile::Dxf,
            Self::Geojson => PlanFile::Geojson,
            Self::PlanesCsv => PlanFile::PlanesCsv,
            Self::LinesCsv => PlanFile::LinesCsv,
        }
    }
}

impl Cross<screens::PlanFile> for PlanFile {
    fn cross(self) -> screens::PlanFile {
        match self {
            Self::Svg => screens::PlanFile::Svg,
            Self::Dxf => screens::PlanFile::Dxf,
            Self::Geojson => screens::PlanFile::Geojson,
            Self::PlanesCsv => screens::PlanFile::PlanesCsv,
            Self::LinesCsv => screens::PlanFile::LinesCsv,
        }
    }
}

/// A file of a plan with what it is called.
#[derive(Clone, Debug, uniffi::Record)]
pub struct PlanFileRow {
    /// Which.
    pub file: PlanFile,
    /// What it is called.
    pub label: String,
}

impl Cross<PlanFileRow> for (screens::PlanFile, String) {
    fn cross(self) -> PlanFileRow {
        let (file, label) = self;
        PlanFileRow {
            file: file.cross(),
            label,
        }
    }
}
