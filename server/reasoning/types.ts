/**
 * The words of the domain as types: the tables on one side (what the studio
 * knows), the bench and the sheet on the other (what comes in, what goes out).
 * Plain readonly data; nothing here computes.
 */

/* ------------------------------------------------------------------ tables */

/** How a fact is known: seen in a stored copy, recalled, or the trade's own. */
export type How = 'read' | 'from memory' | 'common practice';

/** What every row of every table carries. `sources` are ids of rows in sources.yaml. */
export interface Row {
  readonly id: string;
  readonly how: How;
  readonly sources: readonly string[];
  readonly note?: string | undefined;
}

export interface Source {
  readonly id: string;
  readonly title: string;
  readonly publisher?: string | undefined;
  readonly year?: string | undefined;
  readonly where?: string | undefined;
  readonly how: How;
}

/** A property that rules can ask for ("plain-oil"); described once in marks.yaml. */
export interface Mark extends Row {
  readonly means: string;
}

/** Least and most, in the unit the column's name says. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

export type InkGroup =
  'oil' | 'washable-oil' | 'water' | 'screen' | 'litho-drawing' | 'ground-and-resist';

export interface Ink extends Row {
  readonly name: string;
  /** What a printer calls it when the bench is crowded ("relief ink"). */
  readonly shortName: string;
  readonly group: InkGroup;
  readonly binder: string;
  readonly marks: readonly string[];
  /** Agents that take it off while wet, and once it has skinned or dried. */
  readonly liftsWet: readonly string[];
  readonly liftsDried: readonly string[];
  /** Agents that do harm on this ink, and why. */
  readonly never: readonly string[];
  readonly neverWhy?: string | undefined;
  /** The ink is not off until one of these has been used last. */
  readonly finishWith?: readonly string[] | undefined;
  /** Offered as a part with a share and as an additive with a percent. */
  readonly extender?: boolean | undefined;
  readonly usualPercent?: Range | undefined;
  readonly highestPercent?: number | undefined;
  /** A milder ink or extender that does the same job, for the swaps. */
  readonly milder?: readonly string[] | undefined;
  /** Offered first on the bench page. */
  readonly common?: boolean | undefined;
  readonly clean: string;
}

export interface Additive extends Row {
  readonly name: string;
  readonly shortName: string;
  readonly purpose: string;
  readonly marks: readonly string[];
  /** Substance rows whose hazard codes it brings. */
  readonly substances: readonly string[];
  /** Percent by weight of the mixed ink; absent for a surface treatment. */
  readonly usualPercent?: Range | undefined;
  readonly highestPercent?: number | undefined;
  readonly doseHow: How;
  /** Agents that still take the mix off with this in it; absent: it changes nothing. */
  readonly lifts?: readonly string[] | undefined;
  /** Agents that must not touch the mix at all, follow-up included. */
  readonly never?: readonly string[] | undefined;
  readonly milder?: readonly string[] | undefined;
  readonly common?: boolean | undefined;
  readonly clean: string;
  readonly rags: string;
}

/** How a surface is cleaned at all. */
type Method =
  | 'wash'
  /** scraped only; no agent ever */
  | 'scrape-only'
  /** not cleaned: spent, it goes where the rags go */
  | 'as-rag'
  /** no ink should ever be on it; nothing in the shop takes ink out of it */
  | 'keep-ink-off';

export interface Surface extends Row {
  readonly name: string;
  readonly shortName: string;
  readonly what: string;
  readonly group: 'slab' | 'roller' | 'block' | 'plate' | 'press' | 'screen' | 'tool';
  readonly marks: readonly string[];
  readonly method: Method;
  /** A thin oil film may stay (bare iron), or must come off. */
  readonly oilFilm: 'may-stay' | 'must-go';
  /** Surfaces that always come with it (a roller brings its frame and bar). */
  readonly brings: readonly string[];
  /** Place in the working order; low first. */
  readonly turn: number;
  /** Size class for amounts; see amounts in agents.yaml. */
  readonly size: 'small' | 'medium' | 'large';
  /** Scrape with what, in the tables' words; absent when scraping would mar it. */
  readonly scrape?: string | undefined;
  /** What the last pass is, in the tables' words ("dry at once and oil lightly"). */
  readonly last: string;
  /** Name of the drawing in views/assets/tools/<drawing>.svg */
  readonly drawing: string;
  readonly common?: boolean | undefined;
}

type Grade = 'ok' | 'brief' | 'harms';

/** Surface x agent. The stricter of `grade` and `studioGrade` holds. */
export interface Pair extends Row {
  readonly surface: string;
  readonly agent: string;
  readonly grade: Grade;
  readonly why: string;
  /** How the agent is put on this surface, where neither of the agent's own ways fits. */
  readonly apply?: string | undefined;
  /** A studio rule that is stricter than the material tables. */
  readonly studioGrade?: Grade | undefined;
  readonly studioWhy?: string | undefined;
}

export interface Agent extends Row {
  readonly name: string;
  readonly shortName: string;
  /** The substance row with its published facts; the worse one where a name covers several. */
  readonly substance: string;
  readonly marks: readonly string[];
  /** What it leaves behind. */
  readonly residue: 'none' | 'oil-film' | 'soap-film';
  /** Agents that take its residue off; any one will do. */
  readonly followUps: readonly string[];
  /** Place among the passes on one surface; low first. */
  readonly stage: number;
  /** How it is put on, in the tables' words, ordinary and on a `brief` surface. */
  readonly apply: string;
  readonly applyBrief: string;
  /** Extra words when the ink has dried. */
  readonly applyDried: string;
  /** Millilitres for one surface of each size. */
  readonly ml: Readonly<Record<'small' | 'medium' | 'large', Range>>;
  readonly glove: AgentGlove;
}

/** Which rows of the published glove chart speak for an agent. */
interface AgentGlove {
  /** Chart rows, the worst of which counts; empty when the chart has none. */
  readonly chartRows: readonly string[];
  /** Grades used when the chart has no row; ours, cautious. */
  readonly standIn?: Readonly<Record<string, GloveGrade>> | undefined;
  /** Chemicals in the breakthrough table that speak for it. */
  readonly chemicals: readonly string[];
  readonly words: string;
}

export type GloveGrade = 'VG' | 'G' | 'F' | 'P';

export interface GloveMaterial extends Row {
  readonly name: string;
  /** Never named on a sheet (latex: allergy), only graded. */
  readonly named: boolean;
}

export interface GloveChartRow extends Row {
  readonly chemical: string;
  readonly limitedService: boolean;
  readonly grades: Readonly<Record<string, GloveGrade>>;
}

export interface Breakthrough extends Row {
  readonly chemical: string;
  readonly material: string;
  /** `thin`: splash gloves; `thick`: wash-up gloves (about 0.3 mm and more); `unknown` counts for both. */
  readonly thickness: 'thin' | 'thick' | 'unknown';
  readonly minutesLow: number;
  readonly minutesHigh?: number | undefined;
  /** Tested at hand temperature (33 C or warmer), or at room temperature. */
  readonly testedWarm: boolean;
}

export interface GloveRules {
  readonly materials: readonly GloveMaterial[];
  readonly chart: readonly GloveChartRow[];
  readonly breakthrough: readonly Breakthrough[];
  /** No glove is named for longer than this, whatever was measured. */
  readonly mostMinutes: number;
  /** Share of a measured time that may be used, by how it was tested. */
  readonly share: { readonly testedWarm: number; readonly testedCool: number };
  /** EN ISO 374-1 levels: a level is reached when its minutes are exceeded. */
  readonly levels: readonly { readonly level: number; readonly overMinutes: number }[];
  readonly types: readonly {
    readonly type: string;
    readonly minLevel: number;
    readonly minChemicals: number;
  }[];
  readonly letters: readonly { readonly letter: string; readonly chemical: string }[];
}

export interface Limit {
  /** Region id whose authority set it, or a wider one. */
  readonly region: string;
  readonly body: string;
  readonly kind: 'long-term' | 'short-term' | 'ceiling';
  readonly mgM3?: number | undefined;
  readonly ppm?: number | undefined;
  readonly how: How;
  readonly source: string;
  readonly note?: string | undefined;
}

export interface Substance extends Row {
  readonly name: string;
  readonly cas?: string | undefined;
  readonly kind: string;
  /** Of many substances; counted as one, by the figures printed for the whole. */
  readonly isMixture?: boolean | undefined;
  readonly molarMassGMol?: number | undefined;
  readonly densityGMl?: number | undefined;
  /** Lowest published closed-cup flash point; absent when it has none. */
  readonly flashPointC?: number | undefined;
  readonly boilingPointC?: number | undefined;
  /** Highest published vapour pressure near 20 C. */
  readonly vapourPressurePa?: number | undefined;
  readonly lelPercent?: number | undefined;
  readonly uelPercent?: number | undefined;
  readonly viscosityMm2S?: number | undefined;
  readonly limits: readonly Limit[];
  readonly signal?: 'Danger' | 'Warning' | undefined;
  readonly hazardCodes: readonly string[];
  readonly precautionaryCodes: readonly string[];
  readonly pictograms: readonly string[];
}

export interface HazardCode extends Row {
  readonly text: string;
  readonly kind: 'hazard' | 'supplemental' | 'precautionary';
}

export interface Equipment extends Row {
  readonly name: string;
  readonly shortName: string;
  readonly marks: readonly string[];
  readonly drawing: string;
}

/** Somebody or some circumstance that changes what is required. */
export interface Person extends Row {
  readonly name: string;
  readonly ask: string;
}

/** A household or etching product that is never an agent but stands in studios. */
export interface OtherChemical extends Row {
  readonly name: string;
  readonly marks: readonly string[];
}

export interface NeverTogether extends Row {
  /** One tag of each side present: stop. */
  readonly one: readonly string[];
  readonly other: readonly string[];
  readonly makes: string;
  readonly words: string;
}

export const SCALES = [
  'air',
  'gloves',
  'eyes',
  'rags',
  'ignition',
  'drain',
  'storage',
  'people',
  'dust',
] as const;
export type ScaleId = (typeof SCALES)[number];

interface Level {
  readonly id: string;
  readonly name: string;
  /** Line printed when this is the level. */
  readonly line: string;
}

/** An ordered scale, mildest first. */
export interface Scale extends Row {
  readonly id: ScaleId;
  readonly name: string;
  readonly levels: readonly Level[];
}

export interface Stream extends Row {
  readonly name: string;
  /** Level on the rags scale. */
  readonly level: string;
  readonly selfHeating: boolean;
  readonly container: string;
  readonly emptied: string;
  readonly line: string;
}

/** How published facts of an agent turn into ranks; the worst rank is its band. */
export interface BandRules {
  /** Saturated vapour / lowest long-term limit: rank of the first row it is below. */
  readonly vapour: readonly { readonly below: number; readonly rank: number }[];
  /** Under this vapour pressure nothing counts as vapour (Pa at 20 C). */
  readonly nonVolatileBelowPa: number;
  /** Rank of a volatile substance that no table gives a limit for. */
  readonly noLimitRank: number;
  /** GHS flammable-liquid category ("1".."4", "none") to rank. */
  readonly fire: Readonly<Record<string, number>>;
  /** Hazard code to the flammable category that it stands for. */
  readonly fireCodes: Readonly<Record<string, string>>;
  /** Other hazard codes to rank; a code not listed counts as the worst. */
  readonly health: Readonly<Record<string, number>>;
  readonly bands: readonly Band[];
}

export interface Band extends Row {
  readonly band: number;
  readonly name: string;
  readonly require: Readonly<Partial<Record<Exclude<ScaleId, 'rags'>, string>>>;
}

/**
 * When every tag of `when` and one of `anyOf` (if given) is on the bench,
 * require these levels, rag streams and lines. Conditions can only be positive,
 * so that adding a thing can never silence a rule.
 */
export interface Rule extends Row {
  readonly when: readonly string[];
  readonly anyOf: readonly string[];
  readonly require: Readonly<Partial<Record<ScaleId, string>>>;
  /** Rag streams (ids in rags.yaml). */
  readonly streams: readonly string[];
  readonly lines: readonly string[];
  readonly name: string;
  readonly why: string;
}

export const PHASES = [
  'before-inking',
  'while-printing',
  'wash-up',
  'rags-and-waste',
  'lock-up',
  'if-it-goes-wrong',
] as const;
export type Phase = (typeof PHASES)[number];

/** Rags for one surface of each size. */
export interface RagsFor extends Row {
  readonly small: Range;
  readonly medium: Range;
  readonly large: Range;
}

/** What a line says; {surface}, {agent}, {minutes} ... are filled in by words/. */
export interface LineText {
  readonly id: string;
  readonly phase: Phase;
  /** Place in the phase; low first. */
  readonly rank: number;
  /** First words, bold and enough alone. */
  readonly head: string;
  readonly rest: string;
}

export interface FirstAid extends Row {
  readonly name: string;
  /** One of the six doors of /help-now. */
  readonly door: 'spill' | 'eye' | 'skin' | 'swallowed' | 'breathed' | 'fire';
  readonly steps: readonly string[];
  readonly never?: readonly string[] | undefined;
}

export interface EmergencyNumber {
  readonly name: string;
  readonly number: string;
  readonly hours?: string | undefined;
}

interface WasteCode {
  readonly code: string;
  readonly hazardous: boolean;
  readonly means: string;
  readonly how: How;
  /** Rag streams and wastes it is offered for: stream ids, `used-solvent`, `ink`, `wash-water`. */
  readonly for: readonly string[];
  /** Not a code to tell anyone but words about codes; listed, never named in a line. */
  readonly isProse?: boolean | undefined;
  /** Only for liquid below the region's ignitable flash point. */
  readonly onlyIgnitable?: boolean | undefined;
  /** Only when one of these agents is in use. */
  readonly onlyAgents?: readonly string[] | undefined;
}

export interface Region extends Row {
  readonly name: string;
  readonly emergency: readonly EmergencyNumber[];
  readonly poison: readonly EmergencyNumber[];
  /** The same as a line names them: whom to call, and whom about poison. */
  readonly call: string;
  readonly poisonCall: string;
  /** ISO date on which the numbers were last looked up, and in what. */
  readonly checkedOn: string;
  readonly checkedIn: string;
  readonly flushMinutes: number;
  readonly units: 'metric' | 'us';
  readonly wasteCodes: readonly WasteCode[];
  readonly thresholds: readonly {
    readonly name: string;
    readonly value: string;
    readonly unit: string;
    readonly how: How;
    readonly note?: string | undefined;
  }[];
  readonly standards: readonly {
    readonly title: string;
    readonly clause: string;
    readonly figure: string;
    readonly how: How;
  }[];
  /** Regions whose limits hold here too (a member state and its union). */
  readonly limitsOf?: readonly string[] | undefined;
  /** Solvent wipes may be kept this long, where a rule says so. */
  readonly wipes?:
    | {
        readonly days: number;
        readonly label: string;
        readonly words: string;
        readonly source: string;
        /** Solvents whose wipes the rule does not cover when they are thrown away. */
        readonly notThrownAway: readonly string[];
      }
    | undefined;
  /** Liquid waste with a flash point below this is ignitable waste. */
  readonly ignitableWasteBelowC?: number | undefined;
  /** Watery liquid with less alcohol than this, by volume, is not. */
  readonly notIgnitableUnderAlcoholPercent?: number | undefined;
  /** Where those who make hazardous waste are sorted by how much, in kg a month. */
  readonly generator?:
    | {
        readonly verySmallUpToKg: number;
        readonly largeFromKg: number;
        readonly largeOverAcuteKg: number;
      }
    | undefined;
  readonly deferTo: readonly { readonly role: string; readonly phrase: string }[];
  readonly fire: {
    readonly solvent: string;
    readonly oilRag: string;
    readonly neverOnSolvent: string;
  };
}

/** Where a scheme draws its lines, in grams of iodine per 100 g of oil; both ends are semi-drying. */
export interface DryingScheme extends Row {
  readonly name: string;
  readonly semiDryingFrom: number;
  readonly semiDryingTo: number;
}

/** Class of an oil by how well it dries in air. */
export type DryingClass = 'drying' | 'semi-drying' | 'non-drying';

export interface Oil extends Row {
  readonly name: string;
  /** Published range of its iodine value, grams of iodine per 100 g. */
  readonly iodine?: Range | undefined;
  /** Set where the name decides and not the number (tung, boiled or bodied oils, mineral oil). */
  readonly byName?: DryingClass | 'does-not-dry' | undefined;
}

export interface OilRules {
  /** From this iodine value on, rags with the oil count as self-heating. */
  readonly selfHeatsFrom: number;
  readonly schemes: readonly DryingScheme[];
  readonly oils: readonly Oil[];
}

/** A guess with its ends: `counted` is what the model counts with, on the careful side of the middle. */
export interface Guess {
  readonly low: number;
  readonly counted: number;
  readonly high: number;
}

/** What a level of the air scale gives a room that nobody has measured. */
export interface AirSituation extends Row {
  /** Whole changes of the room's air in an hour. */
  readonly airChangesPerHour: Guess;
  /** Mixing factor, 1 and more: by how much the air must exceed that of a perfectly mixed room. */
  readonly mixingFactor: Guess;
  /** Share of the vapour that is caught where it arises and never reaches the room. */
  readonly captured: Guess;
}

/** Figures of the air model, each a row of airing.yaml. */
export const AIR_FIGURES = [
  'temperature-c',
  'near-radius-m',
  'near-air-speed-m-min',
  'film-thickness-mm',
  'water-transfer-m-s',
  'evaporation-factor',
  'use-minutes',
  'longest-airing-min',
  'target-share',
  'most-share',
  'most-share-of-lel',
  'excursion-factor',
  'short-term-min',
  'shift-hours',
] as const;
export type AirFigureId = (typeof AIR_FIGURES)[number];

export interface AirFigure extends Row {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
}

/** What may have to be said beside an estimate, each a row of airing.yaml. */
export const AIR_CAUTIONS = [
  'estimate',
  'guessed-air',
  'air-not-said',
  'no-size',
  'over-limit',
  'near-limit',
  'over-lel',
  'no-fan',
  'never-clears',
  'saturated',
  'unknown',
  'no-limit',
  'no-figures',
  'no-vapour',
  'mixture',
  'lower-elsewhere',
  'bottle-limit',
  'starts-late',
  'long-shift',
] as const;
export type AirCautionId = (typeof AIR_CAUTIONS)[number];

/** Something that must be said beside an estimate; {placeholders} are filled by words/. */
export interface AirCaution extends Row {
  readonly words: string;
}

export interface AirRules {
  readonly situations: readonly AirSituation[];
  readonly figures: readonly AirFigure[];
  readonly cautions: readonly AirCaution[];
}

/** From this limit on (mg/m3) a column rounds to the nearest multiple of so much. */
export interface RoundingStep {
  readonly from: number;
  readonly to: number;
}

/** A published set of group values; the values of two sets are never mixed. */
export interface HydrocarbonColumn extends Row {
  readonly name: string;
  /** Smallest first; absent where the rule is not known. */
  readonly rounding?: readonly RoundingStep[] | undefined;
}

/** What one column allows of one group of hydrocarbons. */
export interface HydrocarbonGroup extends Row {
  readonly column: string;
  readonly name: string;
  readonly limitMgM3: number;
}

export interface HydrocarbonRules {
  readonly columns: readonly HydrocarbonColumn[];
  readonly groups: readonly HydrocarbonGroup[];
}

/** A section of the safety data sheet and what is found there. */
export interface SdsSection extends Row {
  readonly section: number;
  readonly heading: string;
  readonly holds: readonly string[];
}

export interface SdsRules {
  readonly sections: readonly SdsSection[];
  /** Number of the section that settles an unknown of each kind. */
  readonly settledBy: Readonly<Record<Unknown['kind'], number>>;
}

/** A whole bench in one tap. */
export interface UsualBench extends Row {
  readonly name: string;
  readonly short: string;
  readonly bench: BenchInput;
}

export interface Catalogue {
  readonly sources: readonly Source[];
  readonly marks: readonly Mark[];
  readonly inks: readonly Ink[];
  readonly additives: readonly Additive[];
  readonly surfaces: readonly Surface[];
  readonly agents: readonly Agent[];
  readonly pairs: readonly Pair[];
  readonly substances: readonly Substance[];
  readonly hazardCodes: readonly HazardCode[];
  readonly oils: OilRules;
  readonly air: AirRules;
  readonly hydrocarbons: HydrocarbonRules;
  readonly sds: SdsRules;
  readonly gloves: GloveRules;
  readonly equipment: readonly Equipment[];
  readonly people: readonly Person[];
  readonly others: readonly OtherChemical[];
  readonly neverTogether: readonly NeverTogether[];
  readonly scales: readonly Scale[];
  readonly bandRules: BandRules;
  readonly ragsFor: RagsFor;
  readonly rules: readonly Rule[];
  readonly streams: readonly Stream[];
  readonly lines: readonly LineText[];
  readonly firstAid: readonly FirstAid[];
  readonly regions: readonly Region[];
  readonly usualBenches: readonly UsualBench[];
}

/* ------------------------------------------------------------------- bench */

/** A bench as it comes in: ids may be unknown, everything but mixes and surfaces may be absent. */
export interface BenchInput {
  readonly region?: string | undefined;
  readonly mixes: readonly MixInput[];
  readonly surfaces: readonly string[];
  readonly equipment?: readonly string[] | undefined;
  readonly agentsAtHand?: readonly string[] | undefined;
  readonly uses?: readonly { readonly agent: string; readonly ml: number }[] | undefined;
  readonly bottles?: readonly Bottle[] | undefined;
  readonly room?: Room | undefined;
  readonly people?: PeopleInput | undefined;
}

export interface MixInput {
  readonly name?: string | undefined;
  readonly parts: readonly { readonly ink: string; readonly share?: number | undefined }[];
  readonly additives?:
    readonly { readonly additive: string; readonly percent?: number | undefined }[] | undefined;
  readonly dried?: boolean | undefined;
  /** Only on these surfaces; absent: on all of the bench. */
  readonly on?: readonly string[] | undefined;
}

/** What a studio's own bottle of an agent says on its data sheet. Facts beat the generic row. */
export interface Bottle {
  readonly agent: string;
  readonly name?: string | undefined;
  readonly sdsDate: string;
  readonly flashPointC?: number | undefined;
  readonly boilingPointC?: number | undefined;
  readonly vapourPressurePa?: number | undefined;
  readonly limitMgM3?: number | undefined;
  readonly hazardCodes?: readonly string[] | undefined;
}

export interface Room {
  readonly volumeM3?: number | undefined;
  readonly lengthM?: number | undefined;
  readonly widthM?: number | undefined;
  readonly heightM?: number | undefined;
  readonly air?: string | undefined;
  readonly airChangesPerHour?: number | undefined;
  readonly fanM3PerHour?: number | undefined;
  readonly mixingFactor?: number | undefined;
  readonly temperatureC?: number | undefined;
}

export interface PeopleInput {
  readonly count?: number | undefined;
  readonly under16?: boolean | undefined;
  readonly flags?: readonly string[] | undefined;
}

/** The bench made plain: resolved, sorted, each thing once. Equal benches are equal here. */
export interface Bench {
  readonly region: string;
  readonly mixes: readonly Mix[];
  readonly surfaces: readonly string[];
  readonly equipment: readonly string[];
  /** Absent: whatever the plan wants can be had. */
  readonly agentsAtHand?: readonly string[];
  readonly uses: readonly { readonly agent: string; readonly ml: number }[];
  readonly bottles: readonly Bottle[];
  readonly room?: Room;
  readonly people: {
    readonly count?: number;
    readonly under16: boolean;
    readonly flags: readonly string[];
  };
}

export interface Mix {
  readonly id: string;
  readonly name?: string;
  readonly parts: readonly { readonly ink: string; readonly share?: number }[];
  readonly additives: readonly { readonly additive: string; readonly percent?: number }[];
  readonly dried: boolean;
  readonly on?: readonly string[];
}

/* --------------------------------------------------------------------- air */

/** Liquid put out in a room. Exactly one of agent and substance is said; both may be unknown. */
export interface AirUse {
  readonly agent?: string | undefined;
  readonly substance?: string | undefined;
  readonly ml: number;
  /** Minutes after the beginning; absent: at the beginning. */
  readonly startMin?: number | undefined;
  /**
   * The vapour comes off evenly over so many minutes. Absent: a wiped film that dies away, quick at
   * first.
   */
  readonly minutes?: number | undefined;
  /** Share of the liquid that evaporates, 0 to 1; absent: all of it. */
  readonly evaporates?: number | undefined;
  /** What has not evaporated by the end of the use goes under a lid with its rags. */
  readonly lidded?: boolean | undefined;
}

export interface AirInput {
  readonly region?: string | undefined;
  readonly room: Room;
  readonly uses: readonly AirUse[];
  readonly bottles?: readonly Bottle[] | undefined;
  /** Length of the curve; absent: until the room is aired, at most a day. */
  readonly horizonMin?: number | undefined;
  readonly zones?: 1 | 2 | undefined;
  /** Hours that somebody works here in a day; absent: 8. Longer shifts lower the long-term limits. */
  readonly shiftHours?: number | undefined;
}

/** The room as the model counts with it. */
export interface AirRoom {
  readonly volumeM3: number;
  /** Row of airing.yaml; absent where the air was measured. */
  readonly situation?: string;
  /** Air that really moves, cubic metres an hour. */
  readonly airM3PerHour: number;
  readonly airChangesPerHour: number;
  readonly mixingFactor: number;
  readonly captured: number;
  readonly temperatureC: number;
  /** Of the air round the bench; absent with one zone. */
  readonly nearVolumeM3?: number;
  /** Air exchanged between bench and room, cubic metres a minute; absent with one zone. */
  readonly exchangeM3PerMin?: number;
}

/** One published limit beside what the model expects. Lowest limit first. */
export interface AirShare {
  /** Row of substances.yaml. */
  readonly substance: string;
  /** Who set it ("NIOSH REL"), and where it holds. */
  readonly limit: string;
  readonly region: string;
  /** `excursion`: no short-term limit is printed, so some multiple of the long-term one. */
  readonly kind: 'long-term' | 'short-term' | 'ceiling' | 'excursion';
  /** What is expected over the limit. */
  readonly of: number;
  /** The limit that was counted with, after any longer shift. */
  readonly limitMgM3: number;
  /** As its table prints it. */
  readonly printed: { readonly mgM3?: number; readonly ppm?: number };
  /** Molar mass that turned ppm into mg/m3, where the table prints ppm only. */
  readonly molarMassGMol?: number;
  /** It holds in the room's region, or the region has none of its own. */
  readonly applies: boolean;
  readonly how: How;
  readonly source: string;
}

/** Least and most over all that was guessed; an end that is not there: never. */
export interface AirRange {
  readonly low?: number;
  readonly high?: number;
}

export interface AirSaid {
  readonly id: AirCautionId;
  readonly values: Readonly<Record<string, Value>>;
}

/** What the model expects in the air at the bench (near) and in the rest of the room (far). */
export interface AirAnswer {
  readonly region: string;
  readonly room: AirRoom;
  readonly zones: 1 | 2;
  readonly horizonMin: number;
  /** When the last use ends. */
  readonly endMin: number;
  readonly series: readonly {
    readonly min: number;
    readonly farMgM3: number;
    readonly nearMgM3: number;
  }[];
  /** At the bench, all substances together. */
  readonly peakMgM3: number;
  readonly peakPpm: number;
  readonly peakAtMin: number;
  readonly worst15MinMgM3: number;
  readonly average8hMgM3: number;
  readonly shares: readonly AirShare[];
  /** Worst of the three below; 1 is the limit. */
  readonly combinedShare: number;
  /** Summed over substances, each over its lowest limit that applies. */
  readonly combined: {
    readonly longTerm: number;
    readonly shortTerm: number;
    readonly ceiling: number;
  };
  readonly shareOfLel: number;
  /** From the end of the last use until below the target share, and for good; absent: never. */
  readonly airOutMin?: number;
  /** Over all uses of one agent or substance, timed as they are; absent: any amount. */
  readonly mostMl: readonly {
    /** What was typed, where no table knows it. */
    readonly agent?: string;
    readonly substance: string;
    readonly saidMl: number;
    readonly ml?: number;
    /** The same at the worst end of all that was guessed. */
    readonly carefulMl?: number;
  }[];
  /** Smallest flow of the whole room that keeps all limits; absent: none does. */
  readonly fanNeededM3PerHour?: number;
  readonly ranges: Readonly<
    Record<
      | 'peakMgM3'
      | 'worst15MinMgM3'
      | 'average8hMgM3'
      | 'combinedShare'
      | 'shareOfLel'
      | 'airOutMin',
      AirRange
    >
  >;
  readonly cautions: readonly AirSaid[];
}

/* ------------------------------------------------------------------- sheet */

/** Ids of the rows that put something there: rules by their id, other rows as `ink.oil-relief`. */
export type Because = readonly string[];

export interface LevelReached {
  readonly scale: ScaleId;
  readonly level: string;
  /** Place on the scale; 0 is the mildest. */
  readonly height: number;
  readonly because: Because;
  /** Rules that asked for a milder level. */
  readonly folded: Because;
}

export type Value = string | number | Range | readonly string[];

/** One step of a route. `last` is the surface row's own closing words. */
export interface Pass {
  readonly do: 'scrape' | 'agent' | 'follow-up' | 'last';
  readonly agent?: string;
  /** The surface stands it only wiped on and wiped off. */
  readonly brief?: boolean;
  readonly dried?: boolean;
}

export interface Route {
  readonly surface: string;
  readonly mix: string;
  readonly passes: readonly Pass[];
  readonly band: number;
  readonly because: Because;
  /** Nothing takes it off without harm (or nothing at hand does). Then there are no passes. */
  readonly stuck?: StuckReason;
  /** Agents that would do it, were they at hand. */
  readonly wouldDo?: readonly string[];
}

export type StuckReason =
  'unknown-ink' | 'unknown-surface' | 'parts-share-no-agent' | 'all-harm' | 'not-at-hand';

export interface Plan {
  readonly agents: readonly string[];
  readonly routes: readonly Route[];
  /** Sum over routes of the hazard of the agents they use. */
  readonly hazard: number;
  /** Number of plans of mildest bands that it was chosen from, as a decimal string. */
  readonly chosenFrom: string;
}

interface Gloves {
  /** Best first. Minutes are whole, from first contact; absent when nothing is published. */
  readonly materials: readonly {
    readonly id: string;
    readonly grade: GloveGrade;
    readonly changeAfterMin?: number;
  }[];
  /** Minutes of the first material. */
  readonly changeAfterMin?: number;
  readonly thickness: 'thin' | 'thick';
  readonly because: Because;
}

export interface StreamReached {
  /** Row of rags.yaml. */
  readonly id: string;
  /** Its level on the rags scale. */
  readonly level: string;
  readonly selfHeating: boolean;
  /** Rows that send their rags there (`ink.oil-relief`, `agent.veg-oil`). */
  readonly items: readonly string[];
  readonly because: Because;
}

export interface Unknown {
  readonly kind: 'ink' | 'additive' | 'surface' | 'agent' | 'equipment' | 'person' | 'air';
  readonly id: string;
  /** SDS section that settles it. */
  readonly sdsSection: number;
}

export interface Flag {
  readonly kind: 'dose-above-usual' | 'dose-above-highest' | 'bottle-milder' | 'bottle-used';
  readonly subject: string;
  readonly values: Readonly<Record<string, Value>>;
}

export interface Swap {
  readonly kind: 'leave-out' | 'swap';
  readonly what: string;
  readonly for?: string;
  /** Levels that would come down. */
  readonly spares: readonly {
    readonly scale: ScaleId;
    readonly from: string;
    readonly to: string;
  }[];
  /** Agents no longer needed. */
  readonly sparesAgents: readonly string[];
  /** Millilitres of each agent that gives off vapour, at most, that are not put out. */
  readonly sparesMl: readonly { readonly agent: string; readonly ml: number }[];
  /** Minutes of airing that are spared, where the room is known; absent: none, or nobody knows. */
  readonly sparesAirOutMin?: number;
}

/** A line of the sheet before it is put into words. */
export interface SheetLine {
  readonly id: string;
  /** Row of lines.yaml. */
  readonly text: string;
  readonly phase: Phase;
  readonly rank: number;
  readonly values: Readonly<Record<string, Value>>;
  readonly because: Because;
  readonly folded: Because;
  /** The route that a tool's line speaks of. */
  readonly route?: Route;
}

export interface Amounts {
  /** In working order. */
  readonly ml: readonly { readonly agent: string; readonly range: Range }[];
  readonly rags: Range;
}

export interface Sheet {
  readonly bench: Bench;
  readonly levels: readonly LevelReached[];
  readonly plan: Plan;
  readonly gloves: Gloves;
  readonly streams: readonly StreamReached[];
  readonly neverTogether: readonly { readonly id: string; readonly because: Because }[];
  readonly unknown: readonly Unknown[];
  readonly flags: readonly Flag[];
  readonly swaps: readonly Swap[];
  readonly amounts: Amounts;
  /** Vapour in the room; absent where its size was not said, or nothing gives off any. */
  readonly air?: AirAnswer;
  readonly lines: readonly SheetLine[];
}
