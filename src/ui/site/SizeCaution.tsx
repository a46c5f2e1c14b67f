/** What every page and sheet with a size has to say of it. */
export function SizeCaution() {
  return (
    <p>
      <b>Preliminary sizes, not for construction.</b> Wind, uplift, drifted snow, earthquake and connections are not in
      them. A licensed engineer sizes the frame to the local code.
    </p>
  )
}
