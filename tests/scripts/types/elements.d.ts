/* Elements that are found in a page by their class are not typed: what a template holds is for the
   browser tests. */
interface ParentNode { querySelector(selector: string): any; querySelectorAll(selector: string): NodeListOf<any> }
interface Element { closest(selector: string): any }
interface Document { getElementById(name: string): any }
