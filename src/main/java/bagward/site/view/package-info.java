/** What pages say, as plain values made from a board: words, ages, things to do, sheets of heads. */
package bagward.site.view;
