/**
 * For the framer: twenty questions answered, cut list, movement, joints, drying plan, the client, and the checks of every wood that leads. Closed until
 * it is switched on; the device remembers that. On paper only where it is open.
 */
import type { Brief } from '../../choice/brief-types'
import { $shopDetail } from '../../stores/shop-detail'
import { useSaved } from '../../stores/use-saved'
import { useShelf } from '../say/shelf'
import { href } from '../site/href'
import { Asked } from './shop/Asked'
import { Client } from './shop/Client'
import { PlanTable } from './shop/PlanTable'
import { Timber, Wood } from './shop/Wood'

/** Of a page without script, which carries every source note: the leading wood, its figures without what went into them. */
const MOST_STILL = 1
const withoutInputs = <T,>(value: T): T =>
  JSON.parse(JSON.stringify(value, (key, held: unknown) => (key === 'inputs' ? undefined : held))) as T

interface Props {
  readonly brief: Brief
  /** The code of its link. */
  readonly code: string
}

function Inside({ brief, code, still }: Props & { readonly still: boolean }) {
  const { woods, client, asked } = still ? withoutInputs(brief.detail) : brief.detail
  const placeholder = brief.shop.placeholder
  const shown = woods.flatMap((detail) => {
    const report = brief.woods.find((line) => line.report.option.id === detail.option)?.report
    return report ? [{ report, detail }] : []
  })
  const [first] = shown
  return (
    <div class="stack shop-inside">
      <h3>Twenty questions, answered</h3>
      <Asked of={asked} />
      {first && (
        <>
          {brief.lead === null && <p>Nothing passes; this is what came nearest.</p>}
          <Timber {...first} joints={still ? [] : brief.movement.joints} placeholder={placeholder} />
        </>
      )}
      <h3>Drying plan</h3>
      <PlanTable brief={brief} still={still} />
      <h3>About this client</h3>
      <Client of={client} />
      {!still && (
        <p class="no-print">
          <a href={`${href('/compare/')}#b=${code}`}>Set this brief beside another</a>
        </p>
      )}
      <div class="stack shop-woods">
        <h3>Wood by wood, with every check</h3>
        <p>Open a wood for its checks, with demand, capacity and ratio. A ratio of 1 is used up.</p>
        {shown.slice(0, still ? MOST_STILL : undefined).map(({ report, detail }, i) => (
          <Wood key={report.option.id} report={report} detail={i === 0 ? null : detail} placeholder={placeholder} />
        ))}
      </div>
    </div>
  )
}

export function ShopDetail({ brief, code }: Props) {
  const still = useShelf() !== null
  const on = useSaved($shopDetail)
  return (
    <section class="sheet" id="shop" aria-labelledby="shop-title">
      <div class="stack bleed">
        <h2 id="shop-title">For the framer</h2>
        <details class="detail shop-switch" open={on} onToggle={(event) => $shopDetail.set(event.currentTarget.open)}>
          <summary>
            Show shop detail{' '}
            <span class="soft">· twenty questions answered, cut list, joints, drying plan, the client</span>
          </summary>
          {(still || on) && <Inside brief={brief} code={code} still={still} />}
        </details>
      </div>
    </section>
  )
}
