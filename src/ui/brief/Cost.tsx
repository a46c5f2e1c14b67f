/** What it costs: the timber and the whole job, always both, against the alternatives. */
import type { Brief, OptionReport } from '../../choice/types'
import { formatUs } from '../format/quantity'
import { CostBars } from '../pictures/bars'
import { Figures } from './Figures'
import { FIGURE_NAMES } from './names'
import { Section } from './Section'
import { Paragraphs } from './Sentences'

/** Enough to compare; the table of all woods has the rest. */
const MOST = 6

const amount = (q: OptionReport['figures']['jobCost']): number => (typeof q.value === 'number' ? q.value : 0)

export function Cost({ brief }: { readonly brief: Brief }) {
  const { lead } = brief
  const reports = brief.woods
    .filter((line) => line.in)
    .map((line) => line.report)
    .slice(0, MOST)
  return (
    <Section
      id="cost"
      title="What it costs"
      margin={
        <>
          {lead !== null && (
            <Figures
              of={[
                [FIGURE_NAMES.timberCost, lead.figures.timberCost],
                [FIGURE_NAMES.jobCost, lead.figures.jobCost],
                [FIGURE_NAMES.timberShare, lead.figures.timberShare],
                [FIGURE_NAMES.pricePerVolume, lead.figures.pricePerVolume]
              ]}
            />
          )}
          {brief.shop.placeholder && (
            <p>
              <b>Invented prices.</b> They come from a sample sheet, to show how the parts compare. Your framer has the
              real ones.
            </p>
          )}
        </>
      }
    >
      <Paragraphs of={brief.cost.says} />
      {reports.length > 1 && (
        <figure class="figure brief-figure">
          <CostBars
            items={reports.map((report) => ({
              label: report.short,
              timber: amount(report.figures.timberCost),
              rest: amount(report.figures.jobCost) - amount(report.figures.timberCost),
              text: `${formatUs(report.figures.timberCost)} of ${formatUs(report.figures.jobCost)}`,
              lead: report.option.id === lead?.option.id
            }))}
          />
          <figcaption>Timber, of the whole job.{brief.shop.placeholder && <> Placeholder prices.</>}</figcaption>
        </figure>
      )}
    </Section>
  )
}
