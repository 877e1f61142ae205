export { type Action, pictureOf, type Whose } from './action';
export {
  setEyesAt,
  setFrameHeight,
  setFraming,
  setHold,
  setOrientation,
} from './crop';
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
  setFormat,
  setKit,
} from './kit';
export { cutFromLens, endCut, setFocal, setKept, setLens } from './lens';
export { addOwnLens, removeOwnLens, setOwnLens, takeMeasure } from './own-lens';
export {
  addPicture,
  matchLook,
  moveStandpoint,
  removePicture,
  setCameraHeight,
  setFNumber,
  setTilt,
} from './pictures';
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
  setCameraWall,
  setObstacle,
  setRoom,
  setSitterPlace,
} from './room';
export {
  moveLamp,
  resetLight,
  resetToDemo,
  setLight,
  setNotes,
  setPlay,
  setPrintHeight,
  setTitle,
  setUnits,
} from './scene';
export {
  addPerson,
  removePerson,
  resetDimensions,
  resetLooks,
  setBeside,
  setCompany,
  setDimension,
  setGaze,
  setLooks,
  setPose,
  setSitter,
  type Whom,
  withDimension,
} from './sitter';
