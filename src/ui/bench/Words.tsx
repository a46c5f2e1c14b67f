/** What a bench has to say of itself: waiting, failed, a link that did not open, a setting that is refused. */
import type { BenchView } from './store'

interface Props {
  readonly view: Pick<BenchView<object, unknown>, 'engine' | 'waits' | 'badLink'> & { readonly wrong: object }
  readonly onRetry: () => void
  readonly class?: string
}

export function Words({ view: { engine, waits, badLink, wrong }, onRetry, class: names = '' }: Props) {
  const refused = Object.keys(wrong).length > 0
  return (
    <div class={`bench-words ${names}`.trim()} role="status">
      {badLink !== null && (
        <p class="notice">
          This link could not be read{badLink !== '' && <>, at “{badLink}”</>}. Shown is the example instead.
        </p>
      )}
      {waits && engine === 'loading' && <p class="notice">Loading the numbers about wood …</p>}
      {waits && engine === 'failed' && (
        <div class="notice">
          <p>The numbers about wood did not load. What you typed is kept.</p>
          <button type="button" class="btn btn--small" onClick={onRetry}>
            Try again
          </button>
        </div>
      )}
      {refused && (
        <p class="bench-refused">
          One field needs another look. The picture shows the last setting that could be drawn.
        </p>
      )}
    </div>
  )
}
