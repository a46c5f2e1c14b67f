/** A text that somebody typed, line by line. Always text, never markup. */
export function Lines({ text }: { readonly text: string }) {
  return (
    <p class="lines">
      {text.split('\n').map((line, i) => (
        <>
          {i > 0 && <br />}
          {line}
        </>
      ))}
    </p>
  )
}
