/** What draws two briefs side by side: a chunk of its own, fetched with the engine once there are two. */
export { Pair } from './Pair'
