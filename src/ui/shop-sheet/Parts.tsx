/** The parts of the form, in the order a framer thinks of them. What has a usual value is closed and says it. */
import { SHEET } from '../../data/shop-schema'
import type { NumberName } from '../../shop/sheet/fields'
import { readSizes } from '../../shop/sizes'
import { TextField, Word } from './Fields'
import { Once } from './Once'
import { Part } from './Part'
import { Sections } from './Sections'
import { useSheet, useWrong } from './use-sheet'
import { WoodPicker } from './WoodPicker'
import { WoodPrices } from './WoodPrices'

export function ShopPart() {
  return (
    <Part id="shop" title="The shop">
      <TextField field="name" label="Name of the shop" needed />
      <TextField
        field="contact"
        label="How clients reach you"
        help="Plain text, as it should be printed. May stay empty."
      />
    </Part>
  )
}

export function WoodsPart() {
  return (
    <Part id="woods" title="Woods you carry">
      <p>Tick what you can supply, then give each a price.</p>
      <WoodPicker />
      <Word field="woods" />
      <WoodPrices />
    </Part>
  )
}

export function AdditionsPart() {
  const { draft } = useSheet()
  const is = (field: NumberName) => draft[field] ?? '–'
  return (
    <Part
      id="additions"
      title="Additions"
      wrong={useWrong('freeOfHeartAdd', 'long', 'large')}
      brief={`Free of heart centre ${is('freeOfHeartAdd')} %; longer than ${is('longAbove')} ft ${is('longAdd')} %; deeper than ${is('largeAbove')} in ${is('largeAdd')} %.`}
    >
      <div class="shop-grid">
        <Once field="freeOfHeartAdd" />
        <Once field="longAbove" help="Metres can be typed too: 7.3 m." />
        <Once field="longAdd" />
        <Once field="largeAbove" />
        <Once field="largeAdd" />
      </div>
    </Part>
  )
}

export function SizesPart() {
  const { draft } = useSheet()
  const unit = draft['unit'] === 'mm' ? 'mm' : 'in'
  const { sizes } = readSizes(draft['sizes'] ?? '', unit)
  const brief = `${sizes.length} sections in ${unit === 'mm' ? 'mm' : 'inches'}, ${draft['surface'] === 'planed' ? 'planed' : 'full-sawn'}, grade ${(draft['grade'] ?? '').replace('No.', 'No. ')}.`
  return (
    <Part id="sizes" title="Sections and grade" brief={brief} wrong={useWrong('sizes', 'planedAdd')}>
      <Sections />
    </Part>
  )
}

export function QuotePart() {
  const { draft } = useSheet()
  return (
    <Part
      id="quote"
      title="Waste, and how firm the prices are"
      wrong={useWrong('waste', 'band')}
      brief={`${draft['waste'] ?? '–'} % waste; a quote may come out ${draft['band'] ?? '–'} % higher or lower.`}
    >
      <div class="shop-grid">
        <Once field="waste" />
        <Once field="band" />
      </div>
    </Part>
  )
}

export function TellPart() {
  return (
    <Part id="tell" title="What your clients read">
      <TextField field="note" label="A word to your clients" rows={3} help={`At most ${SHEET.note} characters.`} />
      <TextField
        field="cautions"
        label="Your cautions, one a line"
        rows={3}
        help={`Printed with every brief. At most ${SHEET.cautions}, each of ${SHEET.caution} characters.`}
      />
    </Part>
  )
}
