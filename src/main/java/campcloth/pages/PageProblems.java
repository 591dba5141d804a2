package campcloth.pages;

import campcloth.access.NotAllowed;
import campcloth.access.TooOften;
import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import campcloth.job.Busy;
import campcloth.outage.Outage;
import campcloth.outage.Outages;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.InvalidPropertyException;
import org.springframework.beans.TypeMismatchException;
import org.springframework.context.ApplicationContext;
import org.springframework.core.Ordered;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.ErrorResponse;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.servlet.HandlerExceptionResolver;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.support.RequestContextUtils;

/** Whatever goes wrong on a page is told on a page, with what to do about it. Addresses for programs are answered elsewhere. */
@Component
class PageProblems implements HandlerExceptionResolver, Ordered {

    private static final Logger LOG = LoggerFactory.getLogger(PageProblems.class);
    private static final String RETRY_SECONDS = "5";
    /** Key of its texts, beside those of the statuses. */
    private static final String BUSY = "busy";

    private final Outages outages;
    private final ApplicationContext pages;

    PageProblems(Outages outages, ApplicationContext pages) {
        this.outages = outages;
        this.pages = pages;
    }

    @Override
    public int getOrder() {
        return Ordered.HIGHEST_PRECEDENCE;
    }

    @Override
    public @Nullable ModelAndView resolveException(
            HttpServletRequest request, HttpServletResponse response, @Nullable Object handler, Exception failure) {
        if (!PagePaths.isPage(request) || response.isCommitted() || isElsewhere(request)) {
            return null;
        }
        Optional<Outage> outage = outages.of(failure);
        HttpStatus status = outage.map(PageProblems::status).orElseGet(() -> status(failure));
        if (status == HttpStatus.INTERNAL_SERVER_ERROR) {
            LOG.error("Unforeseen failure on a page", failure);
        }
        if (status == HttpStatus.SERVICE_UNAVAILABLE || status == HttpStatus.INSUFFICIENT_STORAGE) {
            LOG.warn("Not now: {}", failure.getMessage());
            response.setHeader(HttpHeaders.RETRY_AFTER, RETRY_SECONDS);
        }
        if (failure instanceof TooOften often) {
            response.setHeader(HttpHeaders.RETRY_AFTER, String.valueOf(often.waitSeconds()));
        }
        ModelAndView page = new ModelAndView("problem");
        page.setStatus(status);
        page.addObject(EveryPage.VISITOR, EveryPage.visitorOf(request));
        page.addObject("said", failure instanceof NotAllowed ? failure.getMessage() : null);
        page.addObject("units", ReadersUnits.shown(request));
        page.addObject(
                "here",
                request.getMethod().equals("GET") && !RefusedPage.isIt(request) ? request.getRequestURI() : "/");
        page.addObject("status", key(failure, outage, status));
        page.addObject("refusals", failure instanceof Refused refused ? refused.refusals() : List.<Refusal>of());
        return page;
    }

    private static String key(Exception failure, Optional<Outage> outage, HttpStatus status) {
        if (failure instanceof Busy) {
            return BUSY;
        }
        return outage.filter(which -> which == Outage.CONTENDED || which == Outage.READ_ONLY)
                .map(which -> which.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .orElseGet(() -> String.valueOf(status.value()));
    }

    private static HttpStatus status(Outage outage) {
        return outage == Outage.STORAGE_FULL ? HttpStatus.INSUFFICIENT_STORAGE : HttpStatus.SERVICE_UNAVAILABLE;
    }

    /** On the port of health and measurements there are no pages to tell it on. */
    private boolean isElsewhere(HttpServletRequest request) {
        return RequestContextUtils.findWebApplicationContext(request) != pages;
    }

    private static HttpStatus status(Exception failure) {
        if (failure instanceof NotHere) {
            return HttpStatus.NOT_FOUND;
        }
        if (failure instanceof NotAllowed) {
            return HttpStatus.FORBIDDEN;
        }
        if (failure instanceof Refused) {
            return HttpStatus.UNPROCESSABLE_CONTENT;
        }
        if (failure instanceof TooOften) {
            return HttpStatus.TOO_MANY_REQUESTS;
        }
        if (failure instanceof Busy) {
            return HttpStatus.SERVICE_UNAVAILABLE;
        }
        if (failure instanceof MaxUploadSizeExceededException) {
            return HttpStatus.CONTENT_TOO_LARGE;
        }
        if (failure instanceof TypeMismatchException || failure instanceof InvalidPropertyException) {
            return HttpStatus.BAD_REQUEST;
        }
        if (failure instanceof InvalidParameterException unreadable) {
            return known(unreadable.getErrorCode());
        }
        if (failure instanceof ErrorResponse told) {
            return known(told.getStatusCode().value());
        }
        return HttpStatus.INTERNAL_SERVER_ERROR;
    }

    private static HttpStatus known(int code) {
        HttpStatus status = HttpStatus.resolve(code);
        return status == null ? HttpStatus.INTERNAL_SERVER_ERROR : status;
    }
}
