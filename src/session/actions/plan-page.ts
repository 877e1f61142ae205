/** The actions of the plan's page, fetched with it; those that the pictures need too are told here again. */
export * from './index';
export {
  addBody,
  addKit,
  addLens,
  chooseBody,
  chooseKit,
  removeBody,
  removeKit,
  removeLens,
  renameKit,
  setBody,
} from './kit';
export { addOwnLens, removeOwnLens, setOwnLens, takeMeasure } from './own-lens';
export {
  addRow,
  addWanted,
  hangPlanned,
  moveWanted,
  removeRow,
  removeWanted,
  setAsked,
  setGroup,
  setPlanPicture,
  setRow,
  setWanted,
} from './plan';
export {
  addObstacle,
  moveBackdrop,
  removeObstacle,
  setAxis,
  setBackdrop,
  setObstacle,
  setSitterPlace,
} from './room';
