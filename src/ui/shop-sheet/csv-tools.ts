/** All that lists of prices need: one chunk, loaded when one is opened or saved. */
export { readCsv, writeCsv } from '../../shop/csv'
export { csvLines } from '../../shop/csv-apply'
export { CsvReview } from './CsvReview'
