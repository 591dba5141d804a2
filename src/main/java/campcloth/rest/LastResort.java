package campcloth.rest;

import io.swagger.v3.oas.annotations.Hidden;
import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** What failed outside all controllers; asked for by itself, the address is not there. */
@RestController
@Hidden
class LastResort implements ErrorController {

    @RequestMapping("/error")
    ResponseEntity<ProblemDetail> failed(HttpServletRequest request) {
        HttpStatus status = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE) instanceof Integer code
                ? status(code)
                : HttpStatus.NOT_FOUND;
        return ResponseEntity.status(status).body(Problems.ofStatus(status, "The request could not be answered."));
    }

    private static HttpStatus status(int code) {
        HttpStatus status = HttpStatus.resolve(code);
        return status == null || !status.isError() ? HttpStatus.INTERNAL_SERVER_ERROR : status;
    }
}
