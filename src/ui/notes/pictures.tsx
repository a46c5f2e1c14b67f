/** The computed pictures that a note can call for, each drawn by the component that other pages use. */
import type { ComponentChildren } from 'preact'
import { shoulderOf } from '../../choice/brief/joints'
import { finishColours } from '../../choice/finish/looks'
import { Args, serviceAt } from '../../notes/args'
import { clockOfArgs } from '../../notes/clock'
import { exampleBrief } from '../../notes/cost'
import { jobOf } from '../../notes/job'
import { ladderOfArgs } from '../../notes/ladder'
import type { Library } from '../../notes/note'
import type { Call } from '../../notes/parse'
import { schefferMonths } from '../../wood/decay'
import { changeBetween } from '../../wood/shrinkage'
import { formatUs } from '../format/quantity'
import { AcrossTimber } from '../pictures/AcrossTimber'
import { CostBars } from '../pictures/bars'
import { ClimateStrip, DecayMonths } from '../pictures/charts'
import { DryingClock, keyOf } from '../pictures/DryingClock'
import { Knots, Pitch, Swatches, Upkeep } from '../pictures/faces'
import { Role } from '../pictures/framing'
import { JointPicture } from '../pictures/Joint'
import { LogEndPair } from '../pictures/LogEndPair'
import { LogEndPicture } from '../pictures/LogEndPicture'
import { SizeLadder } from '../pictures/SizeLadder'
import { FINISH_NAMES, sampleLogEnd } from '../pictures/samples'
import { TrussForces } from '../pictures/TrussForces'
import { WaterMarks } from '../pictures/WaterMarks'

type Draw = (args: Args, library: Library) => ComponentChildren

/** A section in its log from green to a moisture, drawn larger than it moves. */
function logEnd(args: Args, heart: 'boxed' | 'free') {
  const wood = args.wood()
  const [side] = args.section('size', '8x8')
  const to = Number(args.moisture('at', wood, '9').value)
  const by = (total: number) => changeBetween(total, wood.fibreSaturation, to, wood.fibreSaturation)
  return sampleLogEnd(heart, side, by(wood.radial), by(wood.tangential))
}

const DRAW: Readonly<Record<string, Draw>> = {
  'log-ends': (args) => <LogEndPair logEnds={[logEnd(args, 'boxed'), logEnd(args, 'free')]} dims />,
  'log-end': (args) => <LogEndPicture logEnd={logEnd(args, args.word('heart', ['boxed', 'free']))} dims />,
  clock: (args) => <DryingClock report={clockOfArgs(args)} />,
  across: (args) => {
    const { curve, lines, asked } = clockOfArgs(args)
    const labels = Object.fromEntries(lines.map((line, i) => [line.id, `${keyOf(i)} ${line.label}`]))
    const thickness = Math.min(asked.breadth, asked.depth)
    return (
      <AcrossTimber
        moments={curve.milestones}
        labels={labels}
        fibreSaturation={curve.fibreSaturation}
        thickness={thickness}
      />
    )
  },
  shoulder: (args, { sheet }) => {
    const { lead, context } = jobOf(args, sheet)
    return <JointPicture shoulder={shoulderOf(lead, context)} />
  },
  climate: (args) => {
    const { outdoor, months } = serviceAt(args.place(), args.exposure('lives'), args.reference)
    return <ClimateStrip outdoor={outdoor} service={months} />
  },
  'rot-months': (args) => {
    const { temperatureF, wetDays } = args.place()
    const months = schefferMonths(temperatureF, wetDays)
    return <DecayMonths months={months} total={months.reduce((sum, m) => sum + m, 0)} />
  },
  water: (args) => (
    <WaterMarks
      kept={args.word('of', ['sheltered', 'usual', 'holding'])}
      roofed={args.word('over', ['roof', 'sky']) === 'roof'}
    />
  ),
  swatches: (args) => {
    const woods = args.woods().map((wood) => ({ label: wood.short, colours: finishColours(wood, args.reference) }))
    return <Swatches woods={woods} finishes={FINISH_NAMES} />
  },
  bars: (args, { sheet, reference }) => {
    const { lead, cost } = exampleBrief(args.text('project'), sheet, reference)
    const items = cost.woods.slice(0, 4).map(({ short, option, timber, job }) => ({
      label: short,
      timber: Number(timber.value),
      rest: Number(job.value) - Number(timber.value),
      text: formatUs(job),
      lead: option === lead?.option.id
    }))
    return <CostBars items={items} />
  },
  ladder: (args, { sheet }) => {
    const woods = args.woods('among').map((w) => w.id)
    const { lines, asked } = ladderOfArgs(args, sheet)
    const items = lines
      .filter((l) => woods.includes(l.wood) && l.section !== null)
      .map(({ wood, short, section }) => ({
        label: short,
        section: section?.value as readonly [number, number],
        lead: wood === asked.wood
      }))
    return <SizeLadder items={items} />
  },
  forces: (args, { sheet }) => {
    const { drawn } = ladderOfArgs(args, sheet).chosen
    if (!drawn) throw new Error('no truss of that job can be drawn')
    return <TrussForces {...drawn} />
  },
  knots: () => <Knots />,
  pitch: () => <Pitch />,
  role: () => <Role />,
  upkeep: (args) => {
    const [low, high] = args.reference.finishes.find((f) => f.id === args.text('of'))?.weatherYears ?? []
    if (low === undefined || high === undefined) throw new Error('that finish is not renewed')
    return <Upkeep every={[low, high]} />
  }
}

export const PICTURE_NAMES: readonly string[] = Object.keys(DRAW)

/** @throws Error for a picture that is not known, or arguments that are wrong. */
export function pictureOf(call: Call, library: Library): ComponentChildren {
  const draw = Object.hasOwn(DRAW, call.name) ? DRAW[call.name] : undefined
  if (!draw) throw new Error(`no picture or table "${call.name}"`)
  const args = new Args(call, library.reference)
  const drawn = draw(args, library)
  args.done()
  return drawn
}
