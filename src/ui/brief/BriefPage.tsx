/** The page of one's own brief, or of one that came by a link. */
import { useEffect } from 'preact/hooks'
import { $notice } from '../../stores/answers'
import { useSaved } from '../../stores/use-saved'
import { href } from '../site/href'
import { type Shown, useBrief } from './use-brief'
import { useWhatIf } from './use-what-if'

export function BriefPage() {
  const shown = useBrief()
  const notice = useSaved($notice)
  const title = shown.state === 'brief' ? shown.sheet.plainSentence(shown.brief.title, 'us') : null
  useEffect(() => {
    if (title !== null) document.title = `Brief: ${title} · Bentwise`
  }, [title])

  return (
    <>
      {notice !== null && (
        <div class="notice no-print" role="status">
          <p>{notice}</p>
        </div>
      )}
      <Body shown={shown} />
    </>
  )
}

function Body({ shown }: { readonly shown: ReturnType<typeof useBrief> }) {
  switch (shown.state) {
    case 'loading':
      return (
        <div class="stack">
          <h1>Your brief</h1>
          <p role="status">Working it out …</p>
        </div>
      )
    case 'failed':
      return (
        <div class="stack">
          <h1>Your brief</h1>
          <div class="notice" role="alert">
            <p>The brief could not be worked out: the numbers about wood did not load. Your answers are kept.</p>
            <button type="button" class="btn btn--small" onClick={shown.retry}>
              Try again
            </button>
          </div>
        </div>
      )
    case 'empty':
      return (
        <div class="stack">
          <h1>No answers yet</h1>
          <p class="lead">A brief is made from answers, and there are none on this device so far.</p>
          <p class="row">
            <a class="btn" href={href('/start/')}>
              Start the questions
            </a>
            <a href={href('/examples/lakeside-pavilion/')}>See an example first</a>
          </p>
        </div>
      )
    case 'bad-link':
      return (
        <div class="stack">
          <h1>This link did not open</h1>
          <div class="notice" role="alert">
            <p>{shown.says}</p>
            <p>
              {shown.own > 0 ? 'Your own answers on this device are untouched.' : 'Nothing was changed on this device.'}
            </p>
          </div>
          <p class="row">
            {shown.own > 0 && (
              <a
                class="btn"
                href={href('/brief/')}
                onClick={() => setTimeout(() => location.hash !== '' && location.replace(href('/brief/')))}
              >
                See my own brief
              </a>
            )}
            <a class={shown.own > 0 ? '' : 'btn'} href={href('/start/')}>
              {shown.own > 0 ? 'Go on with my answers' : 'Start the questions'}
            </a>
          </p>
        </div>
      )
    case 'brief':
      return (
        <>
          {shown.linked && (
            <div class="notice no-print brief-from" role="status">
              <p>
                <b>This brief came by a link.</b> Your own answers on this device, if any, are as they were.
              </p>
              {shown.left.length > 0 && <p>Left out of it, since it could not be read: {shown.left.join(' ')}</p>}
            </div>
          )}
          <Sheet shown={shown} />
        </>
      )
  }
}

function Sheet({ shown }: { readonly shown: Extract<Shown, { state: 'brief' }> }) {
  const { sheet, brief, compare, engine, linked } = shown
  const whatIf = useWhatIf(engine, brief.answers)
  return (
    <sheet.BriefView
      key={JSON.stringify(brief.answers)}
      brief={brief}
      compare={compare}
      library={engine.library}
      whatIf={whatIf}
      actions={<sheet.Actions brief={brief} linked={linked} />}
    />
  )
}
