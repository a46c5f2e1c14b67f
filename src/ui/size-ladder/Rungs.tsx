/** Every wood on the ladder, leanest first, as a table; the first few in sight. */
import type { LadderLine } from '../../choice/ladder/types'
import { Late, useLive } from './Late'
import { useHere, useView } from './use-ladder'

const IN_SIGHT = 8

export function Rungs() {
  const { shown } = useView()
  const { lines, asked } = shown
  const first = lines.slice(0, IN_SIGHT)
  const rest = lines.slice(IN_SIGHT)
  const passing = lines.filter((l) => l.passes).length
  return (
    <div class="ladder-rungs" id="ladder-woods">
      <Table
        first
        of={first}
        chosen={asked.wood}
        caption="What each wood needs, leanest first. Choose one to see all its checks."
      />
      {rest.length > 0 && (
        <details>
          <summary>
            {rest.length} more woods, of {lines.length} with known strength
            {passing < lines.length && `; ${lines.length - passing} cannot do it`}
          </summary>
          <Table of={rest} chosen={asked.wood} caption="The others, stouter, and those that cannot do it." />
        </details>
      )}
    </div>
  )
}

const MARKS: Readonly<Record<string, string>> = {
  memory: 'recalled',
  mixed: 'part recalled',
  derived: 'derived',
  practice: 'practice'
}
const LIFTS = { two: 'two people', hoist: 'a hoist', crane: 'a crane' } as const

interface TableProps {
  readonly of: readonly LadderLine[]
  readonly chosen: string
  readonly caption: string
  readonly first?: boolean
}
function Table({ of, chosen, caption, first = false }: TableProps) {
  return (
    <table class="data data--stack ladder-table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Wood</th>
          <th scope="col">Section</th>
          <th scope="col">Governs</th>
          <th scope="col">Next lighter</th>
          <th scope="col">Heaviest stick</th>
        </tr>
      </thead>
      <tbody>
        {of.map((line) => (
          <Row key={line.wood} line={line} lead={line.wood === chosen} first={first} />
        ))}
      </tbody>
    </table>
  )
}

interface RowProps {
  readonly line: LadderLine
  readonly lead: boolean
  /** Among those in sight. */
  readonly first: boolean
}

/** The wood's name, by which it is chosen; only a name until there is script to choose with. */
function Pick({ line, lead }: Omit<RowProps, 'first'>) {
  const { store } = useHere()
  if (!useLive()) return <>{line.short}</>
  return (
    <button
      type="button"
      class="ladder-pick"
      aria-pressed={lead}
      onClick={() => {
        store.set('wood', line.wood)
        const to = document.getElementById('ladder-chosen')
        to?.focus({ preventScroll: true })
        to?.scrollIntoView()
      }}
    >
      {line.short}
    </button>
  )
}

function Row({ line, lead, first }: RowProps) {
  const mark = MARKS[line.values]
  return (
    <tr class={lead ? 'lead' : undefined}>
      <th scope="row">
        <Pick line={line} lead={lead} />
        {mark && <span class="mark">{mark}</span>}
        {line.joinery === false && <span class="mark mark--steel">joints: think of steel</span>}
      </th>
      <td data-label="Section">{line.section ? <Late q={line.section} now={first} /> : 'none passes'}</td>
      <td data-label="Governs">
        <span>
          {line.governs}
          {line.used && (
            <>
              {', '}
              {!line.passes && Number(line.used.value) < 1.005 && 'just over '}
              <Late q={line.used} now={first} />
            </>
          )}
        </span>
      </td>
      <td data-label="Next lighter">
        {line.lighter ? (
          <span>
            <Late q={line.lighter.section} />: {line.lighter.lacks},{' '}
            {line.lighter.used && <Late q={line.lighter.used} />}
          </span>
        ) : line.passes ? (
          'the smallest already'
        ) : (
          '–'
        )}
      </td>
      <td data-label="Heaviest stick">
        {line.heaviest ? (
          <span>
            <Late q={line.heaviest.weight} now={first} />, {LIFTS[line.heaviest.lift]}
          </span>
        ) : (
          '–'
        )}
      </td>
    </tr>
  )
}
