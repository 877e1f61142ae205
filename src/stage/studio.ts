/** The studio's four lights, as the session sets them. */
export {
  type LampSetting,
  type Light as StudioLight,
  softnessOf,
  USUAL_LIGHT,
} from '../session/light';
