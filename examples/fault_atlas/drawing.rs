//! The page: faults down, figures across.

use crate::measured::{Fact, Mark, saturation_pa};
use crate::rows::{Page, Row, called, spoken, system, titled, weather};
use crate::svg::{BLACK, Held, Letters, Svg};
use coldloop::diagnosis::measure;
use coldloop::expected::Source;
use coldloop::units::constants::PSI_PA;
use coldloop::{Fault, Feature, Refrigerant};

const WIDTH: f64 = 1_500.0;
const MARGIN: f64 = 44.0;
/// Left part, for the names of the faults.
const NAMES: f64 = 196.0;
const GAP: f64 = 24.0;
/// Least distance of two ticks, for their words.
const APART: f64 = 32.0;
/// Where the panels begin.
const TOP: f64 = 188.0;
/// Height of a severity, of what is left between two sources, of a measured change, and above and below a row.
const SEVERITY: f64 = 4.0;
const BETWEEN: f64 = 2.5;
const MEASURED: f64 = 10.0;
const PADDING: f64 = 6.0;
/// Height of a line of the foot, and how many letters it holds.
const LINE: f64 = 13.0;
const LETTERS: usize = 118;
/// Half width, in scales, of the middle 80 % of a t distribution with five degrees of freedom.
const MIDDLE_80: f64 = 1.476;

const PALE: &str = "#ebebeb";
const RULE: &str = "#d4d4d4";
const ZERO: &str = "#8a8a8a";

/// One column.
struct Panel {
    figure: Feature,
    left: f64,
    width: f64,
    /// Ends of the scale and distance of its ticks, in the unit of the figure.
    ends: [f64; 2],
    step: f64,
    sound: [f64; 2],
    median: f64,
}

/// A measured change on this page, with its letter.
struct Measured<'a> {
    letter: char,
    fact: &'a Fact,
    mark: Mark,
}

/// The page as SVG.
pub(crate) fn svg(page: &Page, facts: &[Fact]) -> String {
    let measured = measured(page, facts);
    let panels = panels(page, &measured);
    let heights: Vec<f64> = page
        .faults
        .iter()
        .map(|fault| height(page, *fault, &measured))
        .collect();
    let bottom = TOP + heights.iter().sum::<f64>();
    let foot = foot(page, &measured);
    let lines = foot.iter().map(Vec::len).max().unwrap_or(0);
    let mut svg = Svg::new(WIDTH, bottom + 72.0 + LINE * lines as f64 + MARGIN / 2.0);
    head(&mut svg, page, !measured.is_empty());
    for panel in &panels {
        panel.frame(&mut svg, page, bottom);
    }
    let mut top = TOP;
    for (fault, height) in page.faults.iter().zip(heights) {
        svg.line([MARGIN, top], [WIDTH - MARGIN, top], 0.5, RULE);
        name(&mut svg, *fault, top);
        for (place, panel) in panels.iter().enumerate() {
            panel.row(&mut svg, page, (*fault, place), &measured, top);
        }
        top += height;
    }
    svg.line([MARGIN, bottom], [WIDTH - MARGIN, bottom], 0.5, RULE);
    for (column, lines) in foot.iter().enumerate() {
        let left = MARGIN + 0.5 * (WIDTH - 2.0 * MARGIN + GAP) * column as f64;
        for (at, line) in lines.iter().enumerate() {
            svg.words([left, bottom + 66.0 + LINE * at as f64], Letters::of(9.5).grey(), line);
        }
    }
    svg.finished()
}

/// The measured changes of this page; those of one measurement have one letter.
fn measured<'a>(page: &Page, facts: &'a [Fact]) -> Vec<Measured<'a>> {
    let mut measured: Vec<Measured<'a>> = Vec::new();
    let mut letters = 'a'..='z';
    for fact in facts {
        let Some(mark) = fact.mark(page) else { continue };
        let same = |other: &&Measured<'_>| {
            other.fact.source == fact.source && other.fact.fault == fact.fault && other.fact.level == fact.level
        };
        let letter = measured
            .iter()
            .find(same)
            .map(|other| other.letter)
            .or_else(|| letters.next());
        measured.extend(letter.map(|letter| Measured { letter, fact, mark }));
    }
    measured
}

/// How many measured changes are below each other in a row.
fn depth(fault: Fault, measured: &[Measured<'_>]) -> usize {
    let of = |figure| {
        measured
            .iter()
            .filter(|m| m.fact.fault == fault && m.fact.figure == figure)
            .count()
    };
    Feature::ALL.into_iter().map(of).max().unwrap_or(0)
}

fn height(page: &Page, fault: Fault, measured: &[Measured<'_>]) -> f64 {
    let lanes = |source| SEVERITY * page.drawn(fault, source).len() as f64 + BETWEEN;
    let drawn: f64 = page.sources().map(lanes).sum();
    let name = if wrapped(measure(fault), 36).len() > 1 {
        44.0
    } else {
        32.0
    };
    f64::max(2.0 * PADDING + drawn + MEASURED * depth(fault, measured) as f64, name)
}

fn panels(page: &Page, measured: &[Measured<'_>]) -> Vec<Panel> {
    let count = page.figures.len() as f64;
    let width = (WIDTH - 2.0 * MARGIN - NAMES) / count - GAP;
    let panel = |(place, (figure, band)): (usize, &(Feature, coldloop::expected::Band<f64>))| {
        let sound = [band.low_80 - band.median, band.high_80 - band.median];
        let mut reached = sound.to_vec();
        for fault in &page.faults {
            for source in page.sources() {
                reached.extend(page.drawn(*fault, source).iter().map(|row| row.moves[place].shift));
            }
        }
        for one in measured.iter().filter(|one| one.fact.figure == *figure) {
            if let Mark::Ends(ends) = one.mark {
                reached.extend(ends);
            }
        }
        let low = reached.iter().copied().fold(0.0, f64::min);
        let high = reached.iter().copied().fold(0.0, f64::max);
        let margin = 0.08 * (high - low);
        let step = step((high - low + 2.0 * margin) * APART / width);
        Panel {
            figure: *figure,
            left: MARGIN + NAMES + GAP + (width + GAP) * place as f64,
            width,
            ends: [low - margin, high + margin],
            step,
            sound,
            median: band.median,
        }
    };
    page.figures.iter().enumerate().map(panel).collect()
}

/// The least of 1, 2, 5, 10, ... that is not smaller.
fn step(least: f64) -> f64 {
    let ten = 10_f64.powf(least.log10().floor());
    [1.0, 2.0, 5.0, 10.0]
        .map(|n| n * ten)
        .into_iter()
        .find(|n| *n >= least)
        .unwrap_or(10.0 * ten)
}

impl Panel {
    fn x(&self, value: f64) -> f64 {
        let [low, high] = self.ends;
        self.left + self.width * ((value - low) / (high - low)).clamp(0.0, 1.0)
    }

    fn ticks(&self) -> impl Iterator<Item = f64> {
        let [low, high] = self.ends.map(|end| end / self.step);
        let step = self.step;
        (low.ceil() as i32..=high.floor() as i32).map(move |n| step * f64::from(n))
    }

    fn frame(&self, svg: &mut Svg, page: &Page, bottom: f64) {
        let [low, high] = self.sound.map(|end| self.x(end));
        svg.filled([low, TOP], [high - low, bottom - TOP], PALE);
        let [title, unit] = titled(self.figure);
        let middle = self.left + 0.5 * self.width;
        svg.words([middle, TOP - 38.0], Letters::of(12.0).held(Held::Middle).bold(), title);
        svg.words([middle, TOP - 24.0], Letters::of(9.5).held(Held::Middle).grey(), unit);
        for tick in self.ticks() {
            let x = self.x(tick);
            let (width, shade) = if tick == 0.0 { (0.9, ZERO) } else { (0.5, RULE) };
            svg.line([x, TOP], [x, bottom], width, shade);
            let letters = Letters::of(9.0).held(Held::Middle);
            svg.words([x, TOP - 6.0], letters, &signed(tick));
            svg.words([x, bottom + 14.0], letters, &signed(tick));
            if let Some(psi) = self.psi(page, tick) {
                svg.words([x, bottom + 27.0], letters.grey(), &signed(psi.round()));
            }
        }
        if self.psi(page, 0.0).is_some() {
            svg.words(
                [middle, bottom + 40.0],
                Letters::of(9.0).held(Held::Middle).grey(),
                "K, and psi from the median",
            );
        }
    }

    /// A shift of a side in psi from the median of sound systems on; `None` for other figures, and where nothing condenses.
    fn psi(&self, page: &Page, shift_k: f64) -> Option<f64> {
        if self.figure != Feature::LowSide && self.figure != Feature::HighSide {
            return None;
        }
        let at = |t_k| saturation_pa(page.system.refrigerant, self.figure, t_k).ok();
        Some((at(self.median + shift_k)? - at(self.median)?) / PSI_PA)
    }

    /// What happens to the figure with a fault.
    fn row(&self, svg: &mut Svg, page: &Page, (fault, place): (Fault, usize), measured: &[Measured<'_>], top: f64) {
        let mut y = top + PADDING;
        for source in page.sources() {
            let rows = page.drawn(fault, source);
            self.ladder(svg, &rows, place, y);
            y += SEVERITY * rows.len() as f64 + BETWEEN;
        }
        for one in measured
            .iter()
            .filter(|m| m.fact.fault == fault && m.fact.figure == self.figure)
        {
            self.measured(svg, one, y + 0.5 * MEASURED);
            y += MEASURED;
        }
    }

    /// The severities of a source, mild ones above.
    fn ladder(&self, svg: &mut Svg, rows: &[Row], place: usize, top: f64) {
        let at = |index: usize| top + SEVERITY * (index as f64 + 0.5);
        for (index, row) in rows.iter().enumerate() {
            let one = row.moves[place];
            let reach = MIDDLE_80 * one.spread;
            let ends = [one.shift - reach, one.shift + reach].map(|end| [self.x(end), at(index)]);
            svg.line(ends[0], ends[1], 0.7, ZERO);
        }
        let points: Vec<[f64; 2]> = (0..rows.len())
            .map(|i| [self.x(rows[i].moves[place].shift), at(i)])
            .collect();
        // Without a measure the severities have no order.
        if rows.iter().any(|row| !measure(row.fault).is_empty()) {
            svg.path(&points, 0.8);
        }
        for (point, row) in points.iter().zip(rows) {
            dot(svg, *point, row.source);
        }
    }

    fn measured(&self, svg: &mut Svg, one: &Measured<'_>, y: f64) {
        let right = match one.mark {
            Mark::Direction(sign) => {
                let [from, to] = [self.x(0.0), self.x(0.0) + 14.0 * sign];
                svg.line([from, y], [to, y], 0.8, BLACK);
                svg.closed(&[[to, y - 3.0], [to + 5.0 * sign, y], [to, y + 3.0]], "#ffffff");
                f64::max(from, to + 5.0 * sign)
            }
            Mark::Ends(ends) => {
                let [low, high] = ends.map(|end| self.x(end));
                svg.line([low, y], [high, y], 0.8, BLACK);
                for x in [low, high] {
                    triangle(svg, [x, y]);
                }
                f64::max(low, high)
            }
        };
        let letters = Letters::of(9.0);
        let (x, letters) = if right + 12.0 < self.left + self.width {
            (right + 5.0, letters)
        } else {
            (right - 6.0, letters.held(Held::Right))
        };
        svg.words([x, y + 3.0], letters, &one.letter.to_string());
    }
}

fn dot(svg: &mut Svg, [x, y]: [f64; 2], source: Source) {
    match source {
        Source::VehicleModel => svg.circle([x, y], 1.7, BLACK),
        Source::IndependentSimulator => svg.circle([x, y], 1.7, "#ffffff"),
        Source::Published => svg.closed(&[[x - 2.3, y], [x, y - 2.3], [x + 2.3, y], [x, y + 2.3]], "#b0b0b0"),
    }
}

fn triangle(svg: &mut Svg, [x, y]: [f64; 2]) {
    svg.closed(&[[x - 3.0, y + 2.6], [x, y - 2.9], [x + 3.0, y + 2.6]], "#ffffff");
}

fn name(svg: &mut Svg, fault: Fault, top: f64) {
    svg.words([MARGIN, top + 16.0], Letters::of(11.5).bold(), &spoken(fault.id()));
    for (at, line) in wrapped(measure(fault), 36).iter().enumerate() {
        svg.words([MARGIN, top + 28.0 + 11.0 * at as f64], Letters::of(9.0).grey(), line);
    }
}

fn head(svg: &mut Svg, page: &Page, measured: bool) {
    svg.words([MARGIN, 46.0], Letters::of(21.0).bold(), "How faults move the readings");
    svg.words([MARGIN, 68.0], Letters::of(13.0), &system(page));
    let weather = format!("{}. Shifts: faulty less sound, in the same weather.", weather(page));
    svg.words([MARGIN, 86.0], Letters::of(11.0).grey(), &weather);
    let (y, letters) = (112.0, Letters::of(11.0));
    let mut x = MARGIN;
    for source in page.sources() {
        for step in 0..3 {
            let step = f64::from(step);
            dot(svg, [x + 3.0 + 3.0 * step, y - 8.0 + SEVERITY * step], source);
        }
        svg.words([x + 20.0, y], letters, called(source));
        x += 170.0;
    }
    if measured {
        triangle(svg, [x + 8.0, y - 4.0]);
        svg.words([x + 20.0, y], letters, "measured");
        x += 105.0;
    }
    svg.words([x, y], letters, "mild above, severe below");
    x += 190.0;
    svg.line([x, y - 4.0], [x + 24.0, y - 4.0], 0.7, ZERO);
    svg.words([x + 31.0, y], letters, "80 % of vehicles about the shift");
    x += 255.0;
    svg.filled([x, y - 9.0], [24.0, 11.0], PALE);
    svg.words(
        [x + 31.0, y],
        letters,
        "80 % of sound systems, with what the sources disagree",
    );
}

/// Two columns of lines: where the shifts come from, and what was measured.
fn foot(page: &Page, measured: &[Measured<'_>]) -> [Vec<String>; 2] {
    let mut sources = vec!["Sources".to_string()];
    for source in page.sources() {
        sources.extend(wrapped(from(source), LETTERS));
    }
    let family = if page.system.refrigerant == Refrigerant::R744 {
        "those of R-744"
    } else {
        "the same for all refrigerants but R-744"
    };
    let note = format!(
        "Below the name of a fault is the measure of its severity. Forms of one fault are drawn as one, with the spread between \
         them. Shifts and spreads are {family}; shifts follow ambient, water in the air and engine speed."
    );
    sources.extend(wrapped(&note, LETTERS));
    let mut facts = Vec::new();
    if !measured.is_empty() {
        facts.push("Measured (tables/evidence/effects.csv; titles in tables/literature.bib)".to_string());
    }
    let mut told = Vec::new();
    for one in measured {
        if told.contains(&one.letter) {
            continue;
        }
        told.push(one.letter);
        let Fact {
            source,
            kind,
            level,
            fault,
            ..
        } = one.fact;
        let refrigerant = one
            .fact
            .refrigerant
            .map_or("refrigerant not named", |refrigerant| refrigerant.id());
        let line = format!(
            "{}  {}: {level}; {refrigerant}; {kind} ({source})",
            one.letter,
            spoken(fault.id())
        );
        facts.extend(wrapped(&line, LETTERS));
    }
    [sources, facts]
}

const fn from(source: Source) -> &'static str {
    match source {
        Source::VehicleModel => "Vehicle model: simulated vehicles of 48 makes (tables/atlas/vehicle-model.csv).",
        Source::IndependentSimulator => {
            "Independent simulator: another program's vehicles, also of 48 makes (tables/atlas/independent-simulator.csv)."
        }
        Source::Published => {
            "Tables of the trade: published fault tables and rules (tables/faults, a source on each row)."
        }
    }
}

/// The words in lines of at most so many letters.
fn wrapped(text: &str, letters: usize) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split_whitespace() {
        match lines.last_mut() {
            Some(line) if line.chars().count() + 1 + word.chars().count() <= letters => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.into()),
        }
    }
    lines
}

fn signed(value: f64) -> String {
    let text = format!("{:+}", (value * 100.0).round() / 100.0);
    if value.abs() < 1e-9 {
        "0".into()
    } else {
        text.replace('-', "\u{2212}")
    }
}
