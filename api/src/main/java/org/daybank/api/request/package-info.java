/** What the endpoints are asked: the facts and policies of one calculator side by side, without arithmetic of their own. */
@NullMarked
package org.daybank.api.request;

import org.jspecify.annotations.NullMarked;
