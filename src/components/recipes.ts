import forge from '../../content/hosting/forge.yaml?raw';
import nginx from '../../content/hosting/nginx.conf?raw';
import store from '../../content/hosting/object-store.sh?raw';
import { filledRecipe } from '../built/hosting/recipe.ts';
import { siteStyle } from './site-style.ts';

/** The recipes for those who host a copy, by the names of their files. */
export const recipes = {
  'nginx.conf': filledRecipe(nginx, siteStyle.sum),
  'object-store.sh': filledRecipe(store, siteStyle.sum),
  'forge.yaml': filledRecipe(forge, siteStyle.sum),
} as const;
