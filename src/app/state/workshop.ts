import { SitterWorkshop } from './sitterWorkshop';

export const workshop = new SitterWorkshop();
