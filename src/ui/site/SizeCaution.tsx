/** What every page and sheet with a size has to say of it. @param small as a note under a list */
export function SizeCaution({ small = false }: { readonly small?: boolean }) {
  return (
    <p class={small ? 'note' : undefined}>
      <b>Preliminary sizes, not for construction.</b> Wind, uplift, drifted snow, earthquake and connections are not in
      them. A licensed engineer sizes the frame to the local code.
    </p>
  )
}
