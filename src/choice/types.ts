/** The words of the choice: answers, options, reasons, and the parts of a Brief. Plain data in, plain data out. */
import type { Quantity, Sentence } from '../data/quantity'
import type { Seasoning } from './clock/types'

export const UNSURE = 'unsure'
/** A single answer: a choice id, several ids in order, a number in SI, a section [shorter, longer] in mm, or not sure. */
export type Answer = string | number | readonly string[] | readonly [number, number]
export type Answers = Readonly<Record<string, Answer>>

export type Heart = 'boxed' | 'free'
export type { Seasoning }
export interface Option {
  /** `species/heart/seasoning` */
  readonly id: string
  readonly species: string
  readonly heart: Heart
  readonly seasoning: Seasoning
}

export const CRITERIA = ['cost', 'movement', 'durability', 'look', 'stoutness', 'time', 'local'] as const
export type Criterion = (typeof CRITERIA)[number]

export type Topic = Criterion | 'supply' | 'strength' | 'drying' | 'safety'
export type Effect = 'out' | 'caution' | 'favour'

export interface Reason {
  /** Id of the rule that speaks. */
  readonly rule: string
  readonly about: Topic
  readonly effect: Effect
  /** A few words for a list. */
  readonly short: Sentence
  readonly says: Sentence
}

/** One option judged: whether it stays in, every reason, and its value (0 worst to 1 best) on each criterion. */
export interface Judgement {
  readonly option: Option
  readonly in: boolean
  readonly reasons: readonly Reason[]
  readonly scores: Readonly<Record<Criterion, number>>
  readonly total: number
}

export interface CheckReport {
  readonly id: string
  readonly name: string
  readonly demand: Quantity
  readonly capacity: Quantity
  readonly ratio: Quantity
  readonly passes: boolean
}

export interface MemberReport {
  /** beam, rafter, tie, post */
  readonly id: string
  readonly name: string
  /** null where no section of the series passes, or none is demanded. */
  readonly section: Quantity | null
  readonly checks: readonly CheckReport[]
  readonly governing: string | null
  readonly says: Sentence
}

/** What the brief says of one option, in numbers that open to their source. */
export interface OptionReport {
  readonly option: Option
  readonly wood: string
  /** The wood's name inside a sentence. */
  readonly said: string
  readonly short: string
  readonly heartSays: string
  readonly seasoningSays: string
  readonly in: boolean
  readonly rank: number | null
  readonly total: number
  readonly scores: Readonly<Record<Criterion, number>>
  readonly reasons: readonly Reason[]
  readonly members: readonly MemberReport[]
  readonly figures: {
    readonly section: Quantity
    readonly moistureDelivered: Quantity
    readonly moistureInService: Quantity
    /** Shrinkage still to come across the depth, over the whole of it, and across the breadth. */
    readonly faceShrinkage: Quantity
    readonly breadthShrinkage: Quantity
    /** Of the longest stick, along its grain: a range. */
    readonly lengthChange: Quantity
    /** What a shoulder opens and closes each year once all is settled. */
    readonly yearlySwing: Quantity
    /** A corner out of true over the longest stick, upper end of the band. */
    readonly twist: Quantity
    /** Opening at a housed shoulder: half the face's shrinkage plus the length change. */
    readonly shoulderGap: Quantity
    /** Upper bound of the openings round a boxed piece; null free of heart. */
    readonly checkOpening: Quantity | null
    readonly logDiameter: Quantity
    readonly stickWeight: Quantity
    readonly durabilityClass: Quantity
    readonly readyWeeks: Quantity
    readonly pricePerVolume: Quantity
    readonly volume: Quantity
    readonly timberCost: Quantity
    readonly jobCost: Quantity
    readonly timberShare: Quantity
  }
}

/** One wood of the shop: its best option, or, where all are out, the one that came nearest, with the reason. */
export interface WoodLine {
  readonly species: string
  readonly wood: string
  readonly in: boolean
  readonly report: OptionReport
  /** What the shop notes of it. */
  readonly note: string | null
  /** The shortest honest word on it: why it leads, what holds it back, or why it is out. */
  readonly says: Sentence
}

/** Section in its log: outlines in mm about the pith, y downwards; computed, never drawn by hand. */
export interface LogEnd {
  readonly heart: Heart
  readonly logRadius: number
  readonly ringRadii: readonly number[]
  readonly before: readonly (readonly [number, number])[]
  readonly after: readonly (readonly [number, number])[]
  /** How many times the movement is drawn larger than it is. */
  readonly exaggeration: number
  readonly says: Sentence
}

/** A joint of the frame once dry: what opens, what comes down, and the housing that hides it. */
export interface JointLine {
  readonly id: 'housed' | 'girt' | 'scarf' | 'rafter'
  readonly name: string
  readonly gap: Quantity
  readonly drop: Quantity
  readonly housing: Quantity
}

/** A housed shoulder to scale, mm; the movement drawn `exaggeration` times. */
export interface Shoulder {
  readonly postSide: number
  readonly beamDepth: number
  readonly housing: number
  /** How far the post's face draws back, the beam's end draws out, and its top comes down. */
  readonly postShrinks: number
  readonly beamShrinks: number
  readonly drop: number
  readonly exaggeration: number
}

export interface OpenQuestion {
  readonly question: string
  readonly title: string
  readonly label: string
  /** True where an answer to it could put another wood or cut first. */
  readonly moves: boolean
  /** Share of its plausible answers that put another option first. */
  readonly changes: number
  readonly says: Sentence
}

/** Another wood or cut that other weights would put first. */
export interface OtherFirst {
  /** The option of that wood and cut that most weights put first. */
  readonly option: string
  /** Share of the weights that put this wood and cut first. */
  readonly share: number
  /** Mean of the weights that put the option first. */
  readonly weights: Readonly<Record<Criterion, number>>
  /** The fewest points whose weights, moved there from the client's while the rest keep their proportions, put it first. */
  readonly named: readonly Criterion[]
  /** Share of the cases (open answers, scatter of the timber) in which it is first at those weights. */
  readonly confidence: number
  readonly says: Sentence
}

/** How far the choice hangs on what each point weighs, the scores being as they stand. */
export interface WeightReport {
  /** True where only weights that keep the client's order are tried; false where all are. */
  readonly ordered: boolean
  /** Share of those weights that put the leading wood and cut first. */
  readonly share: number
  readonly samples: number
  readonly error: number
  /** Share of the cases in which the leading wood and cut is first at its own central weights; null where it has none. */
  readonly confidence: number | null
  readonly confidenceError: number
  readonly says: Sentence
  /** That share in words. */
  readonly holds: Sentence | null
  readonly others: readonly OtherFirst[]
}

/** What the leading option costs, part by part, and what every other wood adds to the timber and to the whole. */
export interface CostReport {
  readonly says: readonly Sentence[]
  /** Timber first, then each part of the work that the sheet charges; empty where nothing passes. */
  readonly bill: readonly { readonly name: string; readonly cost: Quantity }[]
  /** With the range that the sheet's band gives it; null where nothing passes. */
  readonly total: Quantity | null
  /** Woods that pass, as ranked, against the cheapest of them. */
  readonly woods: readonly CostLine[]
}

export interface CostLine {
  readonly option: string
  readonly short: string
  readonly timber: Quantity
  readonly job: Quantity
  /** What it adds to the cheapest's timber and to its whole; null for the cheapest itself. */
  readonly adds: { readonly timber: Quantity; readonly job: Quantity } | null
}

export interface Swatch {
  /** sRGB. */
  readonly hex: string
  /** False where no screen of that range can show it. */
  readonly inGamut: boolean
  /** The colour in two or three words. */
  readonly words: string
}

/** One wood: freshly planed, under a finish, and later. */
export interface WoodLook {
  readonly species: string
  readonly own: Swatch
  readonly finished: Swatch
  readonly later: Swatch
  /** False where it is too dark for the lightness that the finish aims at. */
  readonly reached: boolean
}

/** A finish over each of the woods shown. */
export interface FinishView {
  readonly id: string
  readonly name: string
  /** What "later" is: "After 10 years of light", "After 5 years, before the next coat". */
  readonly later: string
  readonly looks: readonly WoodLook[]
}

/** One wood under the finish wanted: what it asks for, how often, and for how much. */
export interface FinishLine {
  readonly species: string
  readonly wood: string
  readonly short: string
  /** "first choice", "second", "cheapest"; null for the others. */
  readonly role: string | null
  readonly takes: Sentence
  readonly bleeds: Sentence
  /** When its outside is dry enough to coat. */
  readonly dry: Sentence
  /** Years between coats; null where nothing is renewed, as the next. */
  readonly years: Quantity | null
  readonly recoats: Quantity | null
  /** The first coat, and all that fall due in 20 years; null where the sheet does not price finishing. */
  readonly first: Quantity | null
  readonly over: Quantity | null
}

export interface FinishReport {
  readonly says: readonly Sentence[]
  /** The finish wanted, of `views`. */
  readonly chosen: string
  readonly views: readonly FinishView[]
  readonly lines: readonly FinishLine[]
  /** What the swatches are, and that a screen misleads. */
  readonly caution: readonly Sentence[]
}

export interface JobLine {
  readonly question: string
  readonly label: string
  readonly says: Sentence
  /** True where the person was not sure or did not answer, and the brief had to assume. */
  readonly assumed: boolean
}

// --- questions ---

export interface Choice {
  readonly id: string
  readonly label: string
  readonly help?: string
}

interface QuestionBase {
  readonly id: string
  readonly stage: Stage
  /** The question as it is asked. */
  readonly title: string
  /** Short label for lists and the brief. */
  readonly label: string
  /** Why we ask. */
  readonly why: string
  readonly picture: PictureId
  /** What the engine takes when the person is not sure, said to them. */
  readonly unsure: string
  /** Asked only when this holds for the answers so far. */
  readonly when: (a: Answers) => boolean
}

export type Question =
  | (QuestionBase & { readonly kind: 'choice'; readonly choices: readonly Choice[] })
  | (QuestionBase & { readonly kind: 'order'; readonly choices: readonly Choice[] })
  | (QuestionBase & { readonly kind: 'place' })
  | (QuestionBase & {
      readonly kind: 'number'
      readonly quantity: 'span' | 'areaLoad' | 'diameter' | 'pitch' | 'count' | 'money'
      /** Permitted range in SI. */
      readonly min: number
      readonly max: number
      /** An answer offered beside the number, e.g. "no limit". */
      readonly none?: Choice
      readonly examples?: readonly { readonly label: string; readonly value: number }[]
    })
  | (QuestionBase & { readonly kind: 'section'; readonly min: number; readonly max: number; readonly none: Choice })

export type Stage = 'use' | 'place' | 'load' | 'look' | 'plan' | 'weigh'
export type PictureId =
  | 'frame' // what is being built: outlines of frames
  | 'role' // a beam that carries, a beam that is only seen
  | 'exposure' // a house cut open, the chosen place marked
  | 'water' // a post and a beam: where water stands and rot starts
  | 'climate' // outdoor equilibrium moisture and decay index of the place, month by month
  | 'elevation' // the bent to scale with a person: span, pitch, post height
  | 'plan' // bents in a row: spacing, count
  | 'load' // what rests on the timbers
  | 'stick' // one timber beside a person: length, section, depth limit
  | 'log-end' // section in its log, boxed and free
  | 'joint' // a shoulder, closed and open
  | 'finish' // swatches over several woods
  | 'knots'
  | 'pitch'
  | 'upkeep' // years on a line
  | 'timeline' // felling to heating on a line
  | 'money' // timber as part of the whole
  | 'map' // local woods
  | 'order'
