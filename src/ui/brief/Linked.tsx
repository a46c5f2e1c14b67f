/** Over a brief that came by a link or a file: what it rests on, and what of this device it leaves alone. */
import { encodeLink } from '../../shop/link'
import type { Worked } from './worked'

export function Linked({ shown }: { readonly shown: Worked }) {
  const { engine, from, left, otherOwn, brief } = shown
  const { name } = engine.sheet
  return (
    <div class="notice no-print brief-from" role="status">
      <p>
        <b>This brief came by a link{from === 'link' && `, with the sheet of ${name}`}.</b>{' '}
        {from === 'link' &&
          'Woods, sizes and prices are as that sheet states them, the same for everyone who opens it. '}
        {(from === 'own' || from === 'invite') && `It carries no sheet: woods and prices are ${name}’s, in use here. `}
        Your own answers on this device, if any, are as they were.
      </p>
      {otherOwn !== null && (
        <p>
          {otherOwn === 'changed'
            ? 'Your sheet on this device has the same name and says something else: it was changed since, or the link’s was.'
            : 'You keep another sheet on this device.'}{' '}
          <a href={`#b=${encodeLink(brief.answers)}`}>See these answers with the sheet in use here</a>
        </p>
      )}
      {left.length > 0 && <p>Left out of it, since it could not be read: {left.join(' ')}</p>}
    </div>
  )
}
