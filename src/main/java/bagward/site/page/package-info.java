/** One record a page: all that its template shows. */
package bagward.site.page;
