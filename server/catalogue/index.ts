/** The front door of the tables: rules/*.yaml in, a frozen Catalogue out. */
export { loadCatalogue } from './loadCatalogue.js';
export type { CatalogueError, Problem } from './problems.js';
