/** All that lists of prices need: one chunk, loaded when one is opened or saved. */

export { csvLines } from '../../shop/csv/apply'
export { readCsv, writeCsv } from '../../shop/csv/csv'
export { CsvReview } from './CsvReview'
