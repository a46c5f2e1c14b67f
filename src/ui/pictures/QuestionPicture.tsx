/**
 * The picture beside a question: chosen by `question.picture`, drawn from what is answered so far. Where nothing is
 * answered it shows the usual case; a choice just picked is in `answers` already, so the drawing follows the hand.
 * `known` carries what only the engine can tell (moisture by month, log ends ..); without it the drawing says less.
 */
import type { Answers, LogEnd, Question } from '../../choice/types'
import { FOOT } from '../../data/units'
import type { Details } from '../../wood/decay'
import { Money, Order, Timeline } from './bars'
import { ClimateStrip } from './charts'
import { Elevation } from './Elevation'
import { Exposure, type Where } from './Exposure'
import { type FrameKind, FrameKinds } from './FrameKinds'
import { Knots, LocalWoods, Pitch, Swatches, type SwatchRow, Upkeep } from './faces'
import { Joint, Load, Plan, Role, Stick } from './framing'
import { LogEndPair } from './LogEndPair'
import { FINISH_IDS, FINISH_NAMES, ROUGH_SWATCHES } from './samples'
import { WaterMarks } from './WaterMarks'

export interface Known {
  readonly months?: readonly { readonly outdoor: number; readonly service: number }[] | undefined
  readonly place?: string | undefined
  readonly logEnds?: readonly LogEnd[] | undefined
  readonly swatches?: readonly SwatchRow[] | undefined
  /** Opening at a shoulder of the leading wood, mm. */
  readonly gap?: number | undefined
  /** The timber's part of the whole cost. */
  readonly share?: number | undefined
  readonly near?: readonly string[] | undefined
  readonly far?: readonly string[] | undefined
}

interface Props {
  readonly question: Question
  readonly answers: Answers
  readonly known?: Known
}

const FRAMES: Readonly<Record<string, FrameKind>> = {
  'great-room': 'room',
  house: 'whole',
  barn: 'whole',
  pavilion: 'pavilion',
  porch: 'pavilion',
  pergola: 'pavilion',
  beams: 'floor'
}
const PLACES: readonly Where[] = ['heated', 'unheated', 'roofed', 'weather', 'ground']
const KEPT: readonly Details[] = ['sheltered', 'usual', 'holding']
const LEVEL: Readonly<Record<string, number>> = { clear: 0, some: 1, any: 2, must: 0, rather: 1, 'no-matter': 2 }
const GAPS: Readonly<Record<string, readonly [number, string]>> = {
  fine: [16, 'dry: open'],
  small: [6, 'dry: a small gap'],
  tight: [0, 'dry: tight']
}
const STANDS: Readonly<Record<string, number>> = { w6: 6, w13: 13, w26: 26, w52: 52, w104: 104 }
const WAITS: Readonly<Record<string, number>> = { weeks: 3, months: 20, year: 52 }
const HEATS: Readonly<Record<string, number>> = { 'at-once': 3, 'first-winter': 20, 'next-year': 52 }

export function QuestionPicture({ question, answers, known = {} }: Props) {
  const word = (id: string): string => String(answers[id] ?? '')
  const num = (id: string, usual: number): number => (typeof answers[id] === 'number' ? answers[id] : usual)
  const floor = answers['carries'] === 'floor'
  const span = num('span', floor ? 12 * FOOT : 16 * FOOT)
  const place = PLACES.find((p) => p === answers['exposure'])

  switch (question.picture) {
    case 'frame':
      return <FrameKinds chosen={FRAMES[word('project')]} />
    case 'role':
      return <Role role={({ structure: 'carries', looks: 'seen' } as const)[word('role')]} />
    case 'exposure':
      return <Exposure at={place} />
    case 'water':
      return (
        <WaterMarks
          kept={KEPT.find((k) => k === answers['details']) ?? 'usual'}
          roofed={answers['exposure'] === 'roofed'}
        />
      )
    case 'climate':
      return known.months ? (
        <ClimateStrip outdoor={known.months.map((m) => m.outdoor)} service={known.months.map((m) => m.service)} />
      ) : (
        <Exposure at={place} />
      )
    case 'elevation':
      return (
        <Elevation
          span={span}
          pitch={(Math.atan(num('slope', 8 / 12)) * 180) / Math.PI}
          postHeight={num('postHeight', 9 * FOOT)}
          posts={answers['postHeight'] !== 'none'}
          truss={({ 'king-struts': 'struts', queen: 'queens' } as const)[word('truss')] ?? 'king'}
          form={floor ? 'floor' : answers['carries'] === 'beam' ? 'beam' : 'truss'}
        />
      )
    case 'plan':
      return <Plan count={num('count', 4)} spacing={num('spacing', floor ? 4 * FOOT : 10 * FOOT)} span={span} />
    case 'load':
      return <Load carries={answers['role'] === 'looks' ? 'none' : floor ? 'floor' : 'roof'} snow={num('snow', 1500)} />
    case 'stick': {
      const size = answers['size']
      const section =
        Array.isArray(size) && typeof size[0] === 'number' ? (size as unknown as readonly [number, number]) : undefined
      const limit = answers['depthLimit']
      const depth = typeof limit === 'number' ? limit : 250
      return (
        <Stick
          length={num('stick', span)}
          section={section ?? [Math.min(200, depth), depth]}
          limit={typeof limit === 'number'}
        />
      )
    }
    case 'log-end':
      return <LogEndPair logEnds={known.logEnds} dim={answers['checks'] === 'few' ? 'boxed' : undefined} />
    case 'joint': {
      const [gap, says] = GAPS[word('joints')] ?? [8, 'dry: open']
      return <Joint gap={gap} says={says} />
    }
    case 'finish': {
      const chosen = (FINISH_IDS as readonly unknown[]).indexOf(answers['finish'])
      return (
        <Swatches
          woods={known.swatches ?? ROUGH_SWATCHES}
          finishes={FINISH_NAMES}
          chosen={chosen < 0 ? undefined : chosen}
        />
      )
    }
    case 'knots':
      return <Knots level={LEVEL[word('knots')]} />
    case 'pitch':
      return <Pitch matters={answers['resin'] === 'rather-not' || answers['resin'] === 'never' ? true : undefined} />
    case 'upkeep':
      return <Upkeep every={({ seldom: [5, 5], regular: [2, 3] } as const)[word('upkeep')]} />
    case 'timeline': {
      const stands = STANDS[word('stands')] ?? 52
      const wait = Math.min(stands * 0.8, WAITS[word('waits')] ?? 3)
      const heat = HEATS[word('heating')] ?? 20
      const total = stands + heat + Math.max(4, stands * 0.15)
      return (
        <Timeline
          total={Math.ceil(total)}
          items={[
            { label: 'felled, dried, cut', from: 0, to: Math.round(stands - wait) },
            { label: 'cut timbers wait', from: Math.round(stands - wait), to: stands },
            { label: 'raised, not yet heated', from: stands, to: stands + heat },
            { label: 'lived in', from: stands + heat, to: Math.ceil(total) }
          ]}
        />
      )
    }
    case 'money':
      return <Money share={known.share} />
    case 'map':
      return (
        <LocalWoods reach={LEVEL[word('local')]} place={known.place} near={known.near ?? []} far={known.far ?? []} />
      )
    case 'order': {
      const given = answers['order']
      const ids = Array.isArray(given)
        ? given.map(String)
        : question.kind === 'order'
          ? question.choices.map((c) => c.id)
          : []
      const label = (id: string) =>
        question.kind === 'order' ? (question.choices.find((c) => c.id === id)?.label ?? id) : id
      return <Order items={ids.map(label)} />
    }
  }
}
