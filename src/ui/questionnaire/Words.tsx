/** The words of the trade in a question, each of which opens its meaning. */
import type { Question } from '../../choice/types'
import { explained } from '../../notes/explained'
import type { Glossary } from '../../notes/glossary'
import { useGlossary } from '../words/load'
import { Term, Worded } from '../words/Worded'

interface Props {
  readonly question: Question
}

/** Those of its title and of what can be chosen, where no button may stand. */
function wordsOf(question: Question, glossary: Glossary) {
  const rows = [
    ...('choices' in question ? question.choices : []),
    ...('none' in question && question.none !== undefined ? [question.none] : []),
    ...('examples' in question ? (question.examples ?? []) : [])
  ]
  const texts = [question.title, ...rows.flatMap((row) => [row.label, 'help' in row ? row.help : '']), question.unsure]
  return explained(texts.join(' | '), glossary, new Set()).filter((piece) => typeof piece !== 'string')
}

/** Why we ask, in words that open, but for those that stand below. */
export function Why({ question }: Props) {
  const glossary = useGlossary()
  if (glossary === null) return <>{question.why}</>
  const claims = new Map(wordsOf(question, glossary).map(({ id }) => [id, 'below']))
  return <Worded text={question.why} scope={{ glossary, claims }} />
}

export function WordsHere({ question }: Props) {
  const glossary = useGlossary()
  const words = glossary === null ? [] : wordsOf(question, glossary)
  if (words.length === 0) return null
  return (
    <p class="note">
      Words here:{' '}
      {words.map((entry, i) => (
        <span key={entry.id}>
          {i > 0 && ', '}
          <Term entry={entry}>{entry.term.toLowerCase()}</Term>
        </span>
      ))}
    </p>
  )
}
