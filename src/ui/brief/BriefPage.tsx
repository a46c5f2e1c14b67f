/** The page of one's own brief, or of one that came by a link. */
import { useEffect } from 'preact/hooks'
import { $notice } from '../../stores/answers'
import { useSaved } from '../../stores/use-saved'
import { href } from '../site/href'
import { useBrief } from './use-brief'

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
          <p>Somebody sent you a brief as a file, or you kept one?</p>
          <shown.OpenFile />
        </div>
      )
    case 'file':
      return (
        <div class="stack">
          <h1>Open a brief file</h1>
          <p class="lead">
            A brief that was downloaded as JSON opens here again, with the shop sheet that it was made with. It is read
            in this browser and sent nowhere; your own answers on this device stay as they are.
          </p>
          <shown.OpenFile />
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
          {shown.linked ? (
            <shown.sheet.Linked shown={shown} />
          ) : (
            shown.left.length > 0 &&
            shown.from !== 'invite' && (
              <div class="notice no-print brief-from" role="status">
                <p>{shown.left.join(' ')}</p>
              </div>
            )
          )}
          {shown.from === 'invite' && <shown.sheet.InviteNote at="brief" />}
          <shown.sheet.WorkedBrief shown={shown} />
        </>
      )
  }
}
