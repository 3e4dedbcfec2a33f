import forge from '../../content/hosting/forge.yaml?raw';
import nginx from '../../content/hosting/nginx.conf?raw';
import store from '../../content/hosting/object-store.sh?raw';
import { filledRecipe } from '../built/hosting/recipe.ts';

/** The recipes for those who host a copy, by the names of their files. */
export const recipes = {
  'nginx.conf': filledRecipe(nginx),
  'object-store.sh': filledRecipe(store),
  'forge.yaml': filledRecipe(forge),
} as const;
