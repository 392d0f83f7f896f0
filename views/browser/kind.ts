// The page of one kind of class.
import { showPeople } from './answers.ts'

showPeople()
