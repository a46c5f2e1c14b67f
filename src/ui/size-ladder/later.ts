import { wakeLater } from '../bench/later'

wakeLater('size-ladder', () => import('./wake'))
