/** The head of a table: columns of words, then of numbers, then of words again. */
interface Props {
  readonly words: readonly string[]
  readonly numbers?: readonly string[]
  readonly rest?: readonly string[]
}

export function Heads({ words, numbers = [], rest = [] }: Props) {
  return (
    <thead>
      <tr>
        {[...words, ...numbers, ...rest].map((head, i) => (
          <th key={i} scope="col" class={i >= words.length && i < words.length + numbers.length ? 'num' : undefined}>
            {head}
          </th>
        ))}
      </tr>
    </thead>
  )
}
